import { expect, it } from 'vitest'
import { agenda } from '@/core/session/agenda.ts'
import {
  type AlarmBeat,
  alarmBeat,
  unheardLines,
  unheardOf,
} from '@/core/session/alarms/alarm-beat.ts'
import { type Alarm, dayAlarms } from '@/core/session/alarms/day-alarms.ts'
import { unheardText } from '@/core/wording/bench/alarm-text.ts'
import { madePlan } from '../../made-plan.ts'
import { madeSession } from '../made-session.ts'

const minute = 60_000
const plan = madePlan({ flights: 1, warmUpPiece: false })
const session = madeSession(plan)
const [soon, later] = dayAlarms(agenda(session, plan, [], 0), () => 0)
if (!soon || !later) throw new Error('a day of several doughs')
/** Two alarms, due at minutes 10 and 30. */
const alarms: Alarm[] = [
  { ...soon, at: 10 * minute },
  { ...later, at: 30 * minute },
]

const beat = (now: number, change: Partial<AlarmBeat>): AlarmBeat => ({
  ...{ since: 0, called: new Map(), unheard: [], couldRing: true, inSight: true },
  ...{ now: now * minute, ...change },
})

it('calls once to what is due where the page could ring, and tells nothing as missed', () => {
  const first = alarmBeat(alarms, beat(10, {}))
  expect(first.call.map(({ key }) => key)).toEqual([soon.key])
  expect([first.unheard, first.tellsNow]).toEqual([[], false])
  const again = alarmBeat(alarms, beat(11, { called: first.called }))
  expect(again.call).toEqual([])
})

it('tells at return what was due in a frozen page, with one ring, by how much it is late, and nothing of it twice', () => {
  const back = alarmBeat(alarms, beat(40, { couldRing: false }))
  expect(back.call).toEqual([])
  expect(back.tellsNow).toBe(true)
  expect(back.unheard).toEqual([
    { key: soon.key, dueAt: 10 * minute, toldAt: 40 * minute },
    { key: later.key, dueAt: 30 * minute, toldAt: 40 * minute },
  ])
  const { called, unheard } = back
  const next = alarmBeat(alarms, beat(41, { since: 40 * minute, called, unheard }))
  expect([next.call, next.tellsNow]).toEqual([[], false])
  expect(next.unheard).toBe(unheard)
  // What is read is told no more, though it still waits for the hands.
  const read = alarmBeat(alarms, beat(42, { called, unheard: [], couldRing: false }))
  expect([read.call, read.tellsNow, read.unheard]).toEqual([[], false, []])
})

it('keeps what was due on a silent page out of sight, and tells it when the page comes into sight', () => {
  const hidden = alarmBeat(alarms, beat(12, { couldRing: false, inSight: false }))
  // The note of the system comes meanwhile; the page has told nobody yet.
  expect(hidden.call.map(({ key }) => key)).toEqual([soon.key])
  expect(hidden.tellsNow).toBe(false)
  expect(hidden.unheard).toEqual([{ key: soon.key, dueAt: 10 * minute, toldAt: null }])
  const { called } = hidden
  const unheard = unheardOf(unheardLines(hidden.unheard))
  const back = alarmBeat(alarms, beat(25, { since: 12 * minute, called, unheard }))
  expect(back.tellsNow).toBe(true)
  expect(back.unheard).toEqual([{ key: soon.key, dueAt: 10 * minute, toldAt: 25 * minute }])
})

it('needs no word on what was done meanwhile: it has left the alarms', () => {
  const unheard = [{ key: soon.key, dueAt: 10 * minute, toldAt: 25 * minute }]
  const done = alarmBeat(alarms.slice(1), beat(26, { since: 25 * minute, unheard }))
  expect([done.unheard, done.tellsNow]).toEqual([[], false])
})

it('is kept as lines that read back as they were, and a line of anything else is left out', () => {
  const both = [
    { key: 'b1 rest 1 end', dueAt: 600_000, toldAt: null },
    { key: 'b2 rest 1 end', dueAt: 600_001, toldAt: 700_000 },
  ]
  expect(unheardOf(unheardLines(both))).toEqual(both)
  expect(unheardOf('')).toEqual([])
  expect(unheardOf('soon - b1\n5 - b2')).toEqual([{ key: 'b2', dueAt: 5, toldAt: null }])
})

it('says when it was due and by how much the word is late', () => {
  const said = (late: number) => unheardText('C: Rest is over', '14:10', late)
  expect(said(791)).toBe(
    'C: Rest is over, due at 14:10, while this page could not ring: told 13 min late.',
  )
  expect(said(40)).toMatch(/told 40 s late\.$/)
})
