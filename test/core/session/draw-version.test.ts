import { expect, it } from 'vitest'
import { dealSession } from '@/core/session/deal-session.ts'
import { ordersByLevel } from '@/core/session/earlier-orders.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { countedIds, madePlan } from '../made-plan.ts'
import { madeSession } from './made-session.ts'

const levelIds = madePlan().levels.map(({ id }) => id)

it('bakes the first flight in dough order, and in an order of its own where that leaves the doughs as equal', () => {
  const firstBake = (plan: Plan, earlier: Session[] = []) => {
    const session = madeSession(plan, earlier)
    const { dough, bake } = ordersByLevel(session, levelIds)
    return { session, inDoughOrder: JSON.stringify(bake[0]) === JSON.stringify(dough) }
  }
  // Doughs mixed 480 s apart: baked in the reverse order they are 3 × 480 s and more apart in age, of some 5000 s.
  const own = madePlan()
  const one = firstBake(own)
  expect(one.inDoughOrder).toBe(true)
  const two = firstBake(own, [one.session])
  expect(two.inDoughOrder).toBe(true)
  expect([one, two].map(({ session }) => session.dealt.drawVersion)).toEqual([6, 6])
  // Before, the wait of 4980 s decided, being longer than ten staggers of 480 s: a trial begun then goes on so.
  const wanted = { plan: own, trialSeed: 42, number: 1, earlier: [], at: 2_000, zone: own.zone }
  const before = dealSession({ ...wanted, newId: countedIds('s1'), drawVersion: 4 })
  if (!before.ok) throw new Error(before.reason)
  expect(ordersByLevel(before.session, levelIds).bake[0]).not.toEqual(
    ordersByLevel(before.session, levelIds).dough,
  )
  const after = madeSession(own, [before.session])
  expect(after.dealt.drawVersion).toBe(4)
  const older = {
    ...before.session,
    dealt: { ...before.session.dealt, drawVersion: 3 },
  }
  expect(madeSession(own, [older])).toEqual(after)
  // Begun under the last rule, before sets completed one another over sessions: it goes on so too.
  const last = { ...before.session, dealt: { ...before.session.dealt, drawVersion: 5 } }
  expect(madeSession(own, [last]).dealt.drawVersion).toBe(5)
})
