import { expect, it } from 'vitest'
import { askedDay } from '@/core/clock-plan/asked-day.ts'
import { searchedClock } from '@/core/clock-plan/clock-of-plan.ts'
import { mendedPlan } from '@/core/clock-plan/mended-plan.ts'
import { waysOfDay } from '@/core/clock-plan/other-days/ways-of-day.ts'
import { plannedDay } from '@/core/clock-plan/planned-day.ts'
import { goes } from '@/core/clock-plan/search/solve-day.ts'
import { chanceFrom, wholeBetween } from '@/core/design/chance.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { wallClock } from '@/core/wording/words/civil-moment.ts'
import { madePlan } from '../made-plan.ts'
import { madeSession } from '../session/made-session.ts'
import { eatsAt, fourLoaves, friday, quiet, startsAt, zone } from './rested-evening.ts'
import { checkDay } from './search/check-day.ts'
import { countedBudget } from './search/counted-budget.ts'

const wall = wallClock(zone)

/** Loaves, or hot pieces, begun at some hour of the day or evening, or eaten at some hour of the next day. */
function nightPlan(seed: number): Plan {
  const chance = chanceFrom(13, seed)
  const whole = (from: number, to: number) => wholeBetween(chance, from, to)
  const at = friday(0, 0) + whole(7 * 4, 22 * 4) * 900_000
  const day = whole(0, 1) === 0 ? startsAt(at) : eatsAt(at + 86_400_000)
  const plan = fourLoaves(day, {
    ...{ placesPerLoad: whole(1, 2), flights: whole(1, 2) },
    levels: madePlan().levels.slice(0, whole(2, 4)),
  })
  if (whole(0, 3) > 0) return plan
  const steps = plan.steps.filter(({ kind }) => kind !== 'cool' && kind !== 'cut')
  return { ...plan, steps, serving: 'as-baked' }
}

/** Between which two mornings at 6:30 something is put into the oven or taken out, by the times alone. */
function ovenDays(rows: ReturnType<typeof searchedClock>['rows'], originAt: number): Set<number> {
  const morning = wall.momentOf(wall.dayOf(friday(12)), quiet.toMinutes)
  return new Set(
    rows
      .filter(({ do: what }) => what === 'launch' || what === 'pull')
      .map(({ beginSeconds }) =>
        Math.floor((originAt + beginSeconds * 1000 - morning) / 86_400_000),
      ),
  )
}

interface Night {
  plan: Plan
  session: Session
  found: ReturnType<typeof searchedClock>
  problem: ReturnType<typeof askedDay>['problem']
}

function nights(from: number, to: number): Night[] {
  return Array.from({ length: to - from + 1 }, (_, index) => {
    const plan = nightPlan(from + index)
    const session = madeSession(plan, [], from + index)
    const { spanSeconds } = plannedDay(plan, session)
    const { problem } = askedDay(plan, session, spanSeconds, wall)
    const found = searchedClock(plan, session, wall, countedBudget(400))
    return { plan, session, found, problem }
  })
}

const all = nights(1, 30)

it('no night parts the bakes of one tasting, but where nothing keeps them together', () => {
  let [together, parted] = [0, 0]
  for (const [index, { found, problem }] of all.entries()) {
    const { clock, originAt, rows, toKeep } = found
    if (!clock || originAt === null || !toKeep) continue
    const days = ovenDays(rows, originAt).size
    expect([index, days > 1]).toEqual([index, clock.night !== null])
    if (clock.night === null) {
      together += 1
      expect([index, checkDay(problem, clock.begins).faults]).toEqual([index, []])
    } else {
      parted += 1
      expect([index, goes(problem, countedBudget(4000), () => 4)]).not.toEqual([index, true])
    }
  }
  expect([together > 12, parted > 3]).toEqual([true, true])
})

it('the card of another day and the mend beside it name the same begin or end', () => {
  let both = 0
  for (const [index, { plan, session, found }] of all.entries()) {
    if (!found.clock || (found.clock.fits && found.clock.night === null)) continue
    const mend = found.clock.mends.find(({ mend: kind }) => /-(end|start)$/.test(kind))
    const ways = waysOfDay(plan, session, wall, countedBudget(4000))
    const card = ways.find(({ way }) => way.way === 'other-moment')
    expect([index, card !== undefined]).toEqual([index, mend !== undefined])
    if (!(mend && card)) continue
    both += 1
    const fixed = mendedPlan(plan, mend)?.day?.fixed
    const named = fixed?.what === 'eat' ? card.endAt : card.startAt
    expect([index, named]).toEqual([index, fixed?.at])
  }
  expect(both).toBeGreaterThan(4)
})
