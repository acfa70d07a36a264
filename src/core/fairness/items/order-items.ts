import { heatsDiffer } from '@/core/clock-plan/oven-heat.ts'
import { waysDiffer } from '@/core/clock-plan/way-to-oven.ts'
import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import type { Remedy } from '@/core/fairness/remedy.ts'
import { type DealtBalance, dealtBalance } from '@/core/session/dealt-balance.ts'
import { ordersByLevel } from '@/core/session/earlier-orders.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { meanOf } from './ends-of.ts'
import { madeItem } from './made-item.ts'
import { orderLink, type Stand } from './order-link.ts'

type OrderCode = 'dough-order' | 'bake-order' | 'mouth-order' | 'load' | 'oven-place'

/**
 * Orders against the levels over all sessions, dealt or still to be dealt: doughs, baking where it is an order of its own,
 * mouths where loaves are rested, loads and places where levels share the oven, which they cannot at different
 * temperatures; and what comes before what. Where the levels
 * take differently long to the oven, time makes the order: after a late split the item on doughs says so, else no session
 * reverses it.
 */
export function orderItems(plan: Plan, sessions: readonly Session[]): FairnessItem[] {
  const ids = plan.levels.map(({ id }) => id)
  const orders = sessions.map((session) => ordersByLevel(session, ids))
  const dough = orders.map((one) => one.dough).filter((order) => order.length > 0)
  const bake = orders.flatMap((one) => one.bake)
  const mouth = orders.flatMap((one) => one.mouth)
  const balance = dealtBalance(sessions, ids)
  const found = (code: OrderCode, stands: Stand[], count: number) =>
    itemOf({ code, stands, count, plan, sessions: sessions.length })
  const ownBake = JSON.stringify(bake) !== JSON.stringify(dough)
  const asBaked = plan.serving === 'as-baked'
  const saidByDoughs = plan.factor.splitsAt !== 'mix' && waysDiffer(plan)
  return [
    ...(saidByDoughs ? [] : found('dough-order', standsOf(dough), dough.length)),
    ...(ownBake && !saidByDoughs ? found('bake-order', standsOf(bake), bake.length) : []),
    ...(asBaked ? [] : found('mouth-order', standsOf(mouth), mouth.length)),
    ...(plan.placesPerLoad > 1 && !heatsDiffer(plan)
      ? [
          ...found('load', standsIn(balance.loads.times), sessions.length),
          ...found('oven-place', standsIn(balance.places.times), sessions.length),
        ]
      : []),
    ...(asBaked ? pieceBefore(plan, balance) : []),
  ]
}

interface Asked {
  code: OrderCode
  stands: Stand[]
  count: number
  plan: Plan
  sessions: number
}

function itemOf({ code, stands, count, plan, sessions }: Asked): FairnessItem[] {
  const link = orderLink(plan.levels, stands)
  if (!link) return []
  const perLevel = plan.levels.flatMap(({ id: levelId }, level) => {
    const own = stands.filter((stand) => stand.level === level)
    return own.length === 0
      ? []
      : [{ levelId, value: meanOf(own.map(({ position }) => position)) + 1 }]
  })
  const data = { against: link.against, sessions, orders: count }
  const reversedNext = code === 'dough-order' && plan.plannedSessions % 2 === 1
  const remedies: Remedy[] =
    code === 'dough-order' && waysDiffer(plan)
      ? [{ code: 'levels-closer' }]
      : [
          ...(plan.plannedSessions > 1 ? [{ code: 'reverses-itself' as const }] : []),
          { code: reversedNext ? 'reverse-next' : 'add-session' },
          ...(code === 'dough-order' ? [] : [{ code: 'add-flight' as const }]),
        ]
  const path = plan.plannedSessions > 1 && code !== 'dough-order' ? '/flights' : '/plannedSessions'
  return [madeItem(code, { size: link.size, data, perLevel, remedies, path })]
}

const standsOf = (orders: readonly (readonly number[])[]): Stand[] =>
  orders.flatMap((order) => order.map((level, position) => ({ level, position })))

const standsIn = (times: readonly (readonly number[])[]): Stand[] =>
  times.flatMap((row, level) =>
    row.flatMap((count, position) => Array.from({ length: count }, () => ({ level, position }))),
  )

/** A piece always baked after the same other one: how unequally often each came directly before each other. */
function pieceBefore(plan: Plan, { bake }: DealtBalance): FairnessItem[] {
  if (plan.levels.length < 3) return []
  const data = { low: bake.leastBefore, high: bake.mostBefore }
  const size = bake.mostBefore - bake.leastBefore
  const remedies = [{ code: 'add-flight' as const }]
  return [madeItem('piece-before', { size, data, remedies, path: '/flights' })]
}
