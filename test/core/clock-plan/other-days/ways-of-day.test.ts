import { describe, expect, it } from 'vitest'
import { planWithDay } from '@/core/clock-plan/other-days/day-way.ts'
import { waysOfDay } from '@/core/clock-plan/other-days/ways-of-day.ts'
import { plannedDay } from '@/core/clock-plan/planned-day.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { dayWayText } from '@/core/wording/plan/day-way-text.ts'
import { wallClock } from '@/core/wording/words/civil-moment.ts'
import { madeSession } from '../../session/made-session.ts'
import { countedBudget } from '../search/counted-budget.ts'
import { chilled, quiet, saturday, zone } from './chilled-day.ts'

const wall = wallClock(zone)

const ways = (plan: Plan) => waysOfDay(plan, madeSession(plan), wall, countedBudget(4000))

describe('days that differ in kind', () => {
  it('are none where no moment is fixed', () => {
    expect(ways(chilled(12, {}))).toEqual([])
  })

  it('a night that begins too late is slept on, longer or shorter in the cold, or worked through', () => {
    // Eaten at 14:00 after some 13 h 35 min: the first mix would lie at half past midnight.
    const plan = chilled(12, { fixed: { what: 'eat', at: saturday(14) }, quiet })
    const found = ways(plan)
    expect(found.some(({ way }) => way.way === 'as-asked')).toBe(false)
    expect(found.length).toBeGreaterThanOrEqual(2)
    const cold = found.find(({ way }) => way.way === 'other-cold')
    if (cold?.way.way !== 'other-cold') throw new Error('the cold wait can be made longer')
    // On the evening before, all mixed by 23:00: two hours more of cold at the least, some more for the hands.
    expect(cold.nights).toBe(1)
    expect(cold.way.seconds).toBeGreaterThan(13 * 3600)
    expect(cold.way.seconds).toBeLessThan(16 * 3600)
    expect(cold.endAt).toBe(saturday(14))
    const { title, said } = dayWayText(cold, plan)
    expect(title).toMatch(/^Mix Friday 2[0-2]:\d\d, eat Saturday 14:00$/)
    expect(said[0]).toMatch(
      /^Night in the fridge 1[3-6] h.* in place of 12 h, for all doughs alike/,
    )
    const moved = found.find(({ way }) => way.way === 'other-moment')
    if (!moved) throw new Error('another end goes')
    // So long before 14:00 that the mix is over by 23:00, or so long after it that it begins at 6:30.
    expect(Math.abs(moved.endAt - saturday(14))).toBeLessThanOrEqual(7 * 3600_000)
    expect(dayWayText(moved, plan).said[0]).toMatch(/^You eat .* (earlier|later) than asked\.$/)
  })

  it('one that goes stands beside one with a night more in it, and each is kept as it was found', () => {
    const plan = chilled(4, { fixed: { what: 'eat', at: saturday(18) }, quiet })
    const found = ways(plan)
    expect(found.map(({ way, nights }) => [way.way, nights])).toEqual([
      ['as-asked', 0],
      ['other-cold', 1],
    ])
    for (const each of found) {
      expect(each.endAt).toBe(saturday(18))
      const taken = planWithDay(plan, each.way, each.toKeep)
      const day = plannedDay(taken, madeSession(taken))
      expect(day.startAt).toBe(each.startAt)
    }
    expect(dayWayText(found[0] ?? fail(), plan).said[0]).toBe('As you asked.')
  })

  it('forwards from a start the end moves; a cold time that is the factor stays as it is', () => {
    const plan = chilled(4, { fixed: { what: 'start', at: saturday(16) }, quiet })
    const found = ways(plan)
    expect(
      found.every(({ startAt, way }) => way.way === 'other-moment' || startAt === saturday(16)),
    ).toBe(true)
    expect(found.some(({ way }) => way.way === 'other-cold')).toBe(true)
    const acts = { on: 'cold-hours' as const, stepId: 'cold' }
    const factor = { ...plan.factor, splitsAt: 'proof' as const, acts }
    const levels = plan.levels.map((level, at) => ({ ...level, value: 4 + at }))
    const ofFactor = ways({ ...plan, factor, levels, doughs: 'apart' })
    expect(ofFactor.every(({ way }) => way.way !== 'other-cold')).toBe(true)
  })
})

function fail(): never {
  throw new Error('a day was found')
}
