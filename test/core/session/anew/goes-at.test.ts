import { describe, expect, it } from 'vitest'
import { soonestFirst } from '@/app/bench/day/soonest-first.ts'
import { tabState } from '@/app/bench/rail/line-now.ts'
import { dayAlarms } from '@/core/session/alarms/day-alarms.ts'
import { goesAt } from '@/core/session/anew/goes-at.ts'
import { runsOff } from '@/core/session/anew/runs-off.ts'
import { lateBy } from '@/core/session/late-by.ts'
import type { Unit } from '@/core/session/line.ts'
import { lateText } from '@/core/wording/bench/late-text.ts'
import { begun, dayUntil, plan } from './worked-day.ts'

const minutes = (at: number) => begun + at * 60_000

/** The first dough rests from 20 min on for an hour and nobody takes it up until `at` (minutes). */
function heldUp(at: number) {
  const { session } = dayUntil({ plan }, -1)
  const [first = ''] = session.dealt.doughOrder
  const holds = ({ id }: Unit, stepId: string, what: string) =>
    id === first && stepId === 'rest' && what === 'end' ? 1e6 : 0
  return { first, ...dayUntil({ plan }, at * 60, holds) }
}

describe('when the hands come to something', () => {
  it('a day that goes as planned is not made anew, one that is held up for more than a minute is', () => {
    for (const at of [25, 75]) {
      const { day, bench } = dayUntil({ plan }, at * 60)
      const { items, runs } = bench(at * 60)
      expect([at, runsOff(items, day, runs, minutes(at))]).toEqual([at, false])
    }
    // Due at 80 min.
    const { day, bench } = heldUp(82)
    const { items, runs } = bench(80.5 * 60)
    expect(runsOff(items, day, runs, minutes(80.5))).toBe(false)
    expect(runsOff(items, day, runs, minutes(82))).toBe(true)
    expect(runsOff([], day, [], minutes(82))).toBe(false)
  })

  it('what waits for the hands comes later with the day made anew, with no press in between', () => {
    const at = 99
    const { first, anew, bench } = heldUp(at)
    const { items } = bench(at * 60)
    const own = items.find(({ batchId }) => batchId === first)
    const tasks = anew(at * 60)?.tasks ?? null
    expect(own).toMatchObject({ do: 'end', step: { id: 'rest' }, dueAt: minutes(80) })
    // Nineteen minutes past: the hands come to it now, and a minute later a minute later.
    expect(own && goesAt(tasks, own)).toBe(minutes(at))
    expect(own && goesAt(anew(at * 60 + 60)?.tasks ?? null, own)).toBe(minutes(at + 1))
    // Where nothing was made anew, or is not known, the log and the plan tell.
    expect(own && goesAt(null, own)).toBe(minutes(80))
    for (const item of items) {
      const when = goesAt(tasks, item)
      expect(when === null || when >= minutes(at) || item.dueAt === when).toBe(true)
    }
  })

  it('stands in the list by that moment, those of which nothing tells last, the oven in its turn', () => {
    const { bench } = heldUp(99)
    const { items } = bench(99 * 60)
    const reversed = items.toReversed().map((item, place) => [item, place] as const)
    const moment = new Map(reversed.map(([item, place]) => [item, place * 1000]))
    expect(soonestFirst(items, (item) => moment.get(item) ?? null).map(({ item }) => item)).toEqual(
      items.toReversed(),
    )
    expect(soonestFirst(items, () => null).map(({ item }) => item)).toEqual(items)
    const [one, other] = items
    if (!one || !other) throw new Error('two doughs are in work')
    const toBake = { ...one, do: 'start', step: { ...one.step, kind: 'bake' } } as const
    const launches = [toBake, { ...toBake, unit: other.unit }]
    const dealtSecondIsReady = (item: typeof toBake) => (item === launches[1] ? 1000 : 2000)
    expect(
      soonestFirst(launches, (item) => dealtSecondIsReady(item as typeof toBake)).map(
        ({ item }) => item,
      ),
    ).toEqual(launches)
  })
})

describe('late', () => {
  const { bench, first } = heldUp(99)
  const own = bench(99 * 60).items.find(({ batchId }) => batchId === first)
  if (!own || own.dueAt === null || own.latestAt === null) throw new Error('its rest runs')
  const item = own
  const [dueAt, latestAt] = [own.dueAt, own.latestAt]
  const line = (goes: number | null) => ({
    ...{ key: 'k', levelId: null, letter: 'K', unit: item.unit, item, run: undefined },
    goesAt: goes,
  })

  it('is said once the tolerance is over, and not within it', () => {
    expect(latestAt).toBeGreaterThan(dueAt)
    expect(lateBy(item, latestAt)).toBe(null)
    expect(lateBy(item, latestAt + 1000)).toBe((latestAt - dueAt) / 1000 + 1)
    expect(lateText(item, null, latestAt)).toBe('')
    expect(lateText(item, null, dueAt + 19 * 60_000 + 5000)).toBe(', 19 min late')
    // In time now, but the hands come to it only after its tolerance.
    expect(lateText(item, dueAt + 9 * 60_000, dueAt)).toBe(', 9 min late by then')
  })

  it('is not said of what ends by a mark, which is not late before the mark is there', () => {
    expect(lateBy({ ...item, due: 'expected' }, dueAt + 3600_000)).toBe(null)
  })

  it('the rail says it at the same moment, and counts to when the hands come to what is to begin', () => {
    const start = { ...item, do: 'start' as const }
    const at = (now: number, goes: number | null) =>
      tabState({ ...line(goes), item: start }, false, now)
    expect(at(latestAt, null)).toMatchObject({ word: 'then', late: false })
    expect(at(latestAt + 1000, null)).toMatchObject({ word: 'late', late: true })
    expect(at(dueAt - 60_000, dueAt + 120_000).seconds).toBe(180)
    expect(at(dueAt - 60_000, null).seconds).toBe(60)
    expect(at(latestAt + 60_000, latestAt + 90_000).seconds).toBe((dueAt - latestAt) / 1000 - 60)
  })

  it('what is to begin rings when the hands come to it; a wait rings when it is over', () => {
    const start = { ...item, do: 'start' as const }
    const later = dueAt + 300_000
    expect(dayAlarms([start], () => later)).toMatchObject([{ at: later }])
    expect(dayAlarms([item], () => later)).toMatchObject([{ at: dueAt }])
    expect(dayAlarms([start])).toMatchObject([{ at: dueAt }])
  })
})
