import { describe, expect, it } from 'vitest'
import { searchedClock } from '@/core/clock-plan/clock-of-plan.ts'
import { dayInTime, laidInTime } from '@/core/clock-plan/day-in-time.ts'
import { mendedPlan } from '@/core/clock-plan/mended-plan.ts'
import { plannedDay } from '@/core/clock-plan/planned-day.ts'
import { problemOfDay } from '@/core/clock-plan/problem-of-day.ts'
import { mostRung, solveDay } from '@/core/clock-plan/search/solve-day.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { clockPlanSentences, nightSentence } from '@/core/wording/plan/clock-plan-text.ts'
import { wallClock } from '@/core/wording/words/civil-moment.ts'
import { madeSession } from '../session/made-session.ts'
import { fourLoaves, friday, quiet, startsAt, zone } from './rested-evening.ts'
import { countedBudget } from './search/counted-budget.ts'

const wall = wallClock(zone)

function found(plan: Plan) {
  const session = madeSession(plan)
  const day = searchedClock(plan, session, wall, countedBudget(4000))
  if (!day.clock) throw new Error('some plan is always found')
  return { session, day, clock: day.clock }
}

/** On how many evenings or mornings something is baked, by the wall clock: worked out from the run sheet alone. */
function bakedOn({ day }: ReturnType<typeof found>): number {
  const halfDays = day.rows
    .filter(({ do: what }) => what === 'launch' || what === 'pull')
    .map(({ beginSeconds }) => {
      const at = (day.originAt ?? 0) + beginSeconds * 1000
      const since = wall.momentOf(wall.dayOf(friday(12)), quiet.toMinutes)
      return Math.floor((at - since) / 86_400_000)
    })
  return new Set(halfDays).size
}

describe('what is tasted together is baked together', () => {
  it('would be parted by the night if nobody asked: two evenings are less far from every wait than one', () => {
    const plan = fourLoaves(startsAt(friday(19)))
    const session = madeSession(plan)
    const { problem } = problemOfDay(plan, session)
    const inTime = dayInTime(plan, plannedDay(plan, session).spanSeconds, wall)
    const solved = solveDay(laidInTime(problem, inTime), countedBudget(4000))
    expect(solved.ok && solved.plan.rung <= mostRung && solved.plan.spanSeconds > 10 * 3600).toBe(
      true,
    )
  })

  it('is baked in one evening where that goes', () => {
    const early = found(fourLoaves(startsAt(friday(17))))
    expect([early.clock.fits, early.clock.night, bakedOn(early)]).toEqual([true, null, 1])
  })

  it('is parted only where nothing else goes, which is said with its cost and the mend that joins it', () => {
    const plan = fourLoaves(startsAt(friday(19)))
    const evening = found(plan)
    const { clock, session } = evening
    expect(clock.fits).toBe(true)
    expect(bakedOn(evening)).toBe(2)
    const doughOf = (id: string) => `dough ${session.dealt.doughOrder.indexOf(id) + 1}`
    // From the last pull before 23:00 less an hour of cooling to the first after 6:30 and a method of two hours: some twelve hours.
    expect(nightSentence(clock, plan, doughOf)).toMatch(
      /^Dough 1.* baked before a night, .*dough 4 after it: what is baked first is 1\d h.* older at the tasting than what is baked last; all are baked in one go if you start .* earlier\.$/,
    )
    // Nor is it called equal beside that.
    expect(clockPlanSentences(clock, plan).join(' ')).not.toContain('equal')
    const [join] = clock.mends
    if (join?.mend !== 'earlier-start') throw new Error('an earlier start joins it')
    const mended = mendedPlan(plan, join)
    if (!mended) throw new Error('another start is a change of the plan')
    const joined = found(mended)
    expect([joined.clock.fits, joined.clock.night, bakedOn(joined)]).toEqual([true, null, 1])
    // The price of it: waits further off than those of two evenings.
    expect(joined.clock.rung).toBeGreaterThan(clock.rung)
    // Five minutes later, and it is parted again: the mend is the smallest.
    const fixed = mended.day?.fixed
    if (!fixed) throw new Error('a moment is fixed')
    const late = found({ ...mended, day: startsAt(fixed.at + 300_000) })
    expect(bakedOn(late)).toBe(2)
  })

  it('is asked of hot pieces too, of which people would taste twice', () => {
    const hot = fourLoaves(startsAt(friday(20, 30)), { serving: 'as-baked' })
    const steps = hot.steps.filter(({ kind }) => kind !== 'cool' && kind !== 'cut')
    const plan = { ...hot, steps }
    const evening = found(plan)
    const said = nightSentence(evening.clock, plan, () => 'some')
    expect([bakedOn(evening), said?.includes('people taste twice')]).toEqual([2, true])
  })

  it('is not asked where one dough runs apart in time, for there the method parts the bakes', () => {
    const acts = { on: 'proof-time' as const, stepId: 'proof' }
    const plan = fourLoaves(startsAt(friday(17)), { doughs: 'one' })
    const factor = { ...plan.factor, splitsAt: 'proof' as const, acts }
    // One to two hours of proof end on the evening, fifteen and sixteen the next morning.
    const levels = plan.levels.map((level, at) => ({
      ...level,
      value: [60, 120, 900, 960][at] ?? 0,
    }))
    const day = found({ ...plan, factor, levels })
    expect([day.clock.fits, bakedOn(day)]).toEqual([true, 2])
    expect(nightSentence(day.clock, { ...plan, factor, levels }, () => 'some')).toMatch(
      /^Some pieces are baked before a night, some after it: .* doughs mixed apart would meet at the oven\.$/,
    )
  })
})
