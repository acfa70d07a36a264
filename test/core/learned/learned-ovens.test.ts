import { expect, test } from 'vitest'
import { learnedOvens } from '@/core/learned/learned-ovens.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { learnedOvenText } from '@/core/wording/findings/learned-text.ts'
import { dayOf } from '../../journeys/made-day.ts'
import { madeLog } from '../session/made-events.ts'
import { nth } from '../session/made-session.ts'

const minute = 60_000
const begun = Date.UTC(2026, 10, 21, 8)

type Read = [secondsAfterPull: number, celsius: number]

/**
 * A day of four loads of one piece, each in the oven for 5 min and the next launched 10 min after the pull; the floor at 300 °C
 * before the first, then as read after each pull.
 */
function worked(
  reads: readonly Read[][],
  change: { ovens?: number; id?: string } = {},
): WholeTrial {
  const { ovens = 1, id = 'trial-oven' } = change
  const kitchen = Array.from({ length: ovens }, (_, at) => ({
    ...{ id: `oven-${at + 1}`, kind: 'oven' as const, name: 'clay oven', places: 1 },
  }))
  const whole = dayOf({ kitchenIds: kitchen.map((oven) => oven.id), placesPerLoad: 1 }, begun)
  const { events, log } = madeLog()
  const floor = (celsius: number, at: number) =>
    log(
      { kind: 'temperature', of: 'oven-floor', celsius },
      { about: { kind: 'session', id: 'session-a' }, at: begun + at },
    )
  floor(300, -minute)
  const pieces = nth(whole.sessions, 0).pieces
  for (const [at, read] of reads.entries()) {
    const about = { kind: 'piece', id: nth(pieces, at).id } as const
    log({ kind: 'bake-in' }, { about, at: begun + at * 15 * minute })
    const pulledAt = (at * 15 + 5) * minute
    log({ kind: 'bake-out' }, { about, at: begun + pulledAt })
    for (const [seconds, celsius] of read) floor(celsius, pulledAt + seconds * 1000)
  }
  return { ...whole, trial: { ...whole.trial, id }, kitchen, events: [...events] }
}

test('between a colder and a hot reading it rose evenly; of all pulls the middle one counts, up to a half minute', () => {
  // 290 °C, 10 below the first launch’s 300, is reached by hand: 60 + (290 − 270)/(300 − 270) · 120 = 140 s; at most 200 s; and
  // 90 + (290 − 280)/(295 − 280) · 90 = 150 s. The middle of 140, 150 and 200 is 150.
  const [oven] = learnedOvens([
    worked([
      [
        [60, 270],
        [180, 300],
      ],
      [[200, 296]],
      [
        [90, 280],
        [180, 295],
      ],
    ]),
  ])
  expect(oven).toEqual({
    ...{ ovenId: 'oven-1', trialIds: ['trial-oven'], pulls: 3, ok: true, recoverySeconds: 150 },
  })
  expect(oven && learnedOvenText(oven)).toMatch(
    /^Hot again 2 min 30 s after a load, .* three pulls in one trial\.$/,
  )
})

test('pulls read while it was colder alone count as longer than all; where they are most, the longest is said and nothing offered', () => {
  const colder: Read[] = [[240, 250]]
  const [half] = learnedOvens([worked([[[100, 298]], colder, [[120, 298]]])])
  expect(half).toMatchObject({ ok: true, recoverySeconds: 120 })
  const [most] = learnedOvens([worked([colder, [[100, 298]], [[300, 270]]])])
  expect(most).toMatchObject({ ok: false, reason: 'still-colder', atLeastSeconds: 300 })
  expect(most && learnedOvenText(most)).toMatch(/still colder when it was read, up to 5 min after/)
})

test('trials of one oven teach together; two pulls, several ovens, and a floor that was read after the next launch teach nothing', () => {
  const hot: Read[] = [[95, 300]]
  const [few] = learnedOvens([worked([hot, hot])])
  expect(few).toMatchObject({ ok: false, reason: 'few-pulls', pulls: 2 })
  const [both] = learnedOvens([worked([hot, hot]), worked([hot], { id: 'trial-b' })])
  expect(both).toMatchObject({
    pulls: 3,
    recoverySeconds: 120,
    trialIds: ['trial-oven', 'trial-b'],
  })
  expect(learnedOvens([worked([hot, hot, hot], { ovens: 2 })])).toEqual([])
  // Ten minutes and more after the pull the next piece is inside.
  expect(learnedOvens([worked([[[660, 300]], [[660, 300]], []])])).toEqual([])
})
