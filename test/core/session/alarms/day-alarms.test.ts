import { expect, it } from 'vitest'
import { agenda } from '@/core/session/agenda.ts'
import {
  dayAlarms,
  notYetCalled,
  rungBetween,
  stillCalled,
} from '@/core/session/alarms/day-alarms.ts'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import { madePlan } from '../../made-plan.ts'
import { madeLog } from '../made-events.ts'
import { madeSession } from '../made-session.ts'

const minute = 60_000
// One flight, so that the day fits one pair of hands with every rest as long as the method says.
const plan = madePlan({ flights: 1, warmUpPiece: false })
const session = madeSession(plan)
const [first = '', second = ''] = session.dealt.doughOrder
const about = { kind: 'batch', id: first } as const

it('rings at the end of a wait and for the dough that begins next, and not for work that runs', () => {
  const { events, log } = madeLog()
  log({ kind: 'step-started', stepId: 'mix', repeat: 1 }, { about, at: 0 })
  const at = (now: number) => dayAlarms(agenda(session, plan, effectiveEvents(events), now))
  // The mix runs: hands are on it. The second dough begins after the first, which rings.
  expect(at(minute).map(({ item }) => [item.unit.id, item.do])).toContainEqual([second, 'start'])
  expect(at(minute).every(({ item }) => item.unit.id !== first)).toBe(true)
  log({ kind: 'step-stopped', stepId: 'mix', repeat: 1 }, { about, at: 8 * minute })
  log({ kind: 'step-started', stepId: 'rest', repeat: 1 }, { about, at: 8 * minute })
  const rest = at(9 * minute).find(({ item }) => item.unit.id === first)
  // 30 min from minute 8 on, or as much longer as the day asks within the step's tolerance of 2 min and the wait for the oven.
  expect(rest?.key).toBe(`${first} rest 1 end`)
  expect(rest?.at).toBe(rest?.item.dueAt)
  expect(rest?.at).toBeGreaterThanOrEqual(36 * minute)
})

it('tells what rang while nobody could hear it: after the last moment of hearing, up to now', () => {
  const { events, log } = madeLog()
  log({ kind: 'step-started', stepId: 'rest', repeat: 1 }, { about, at: 0 })
  const alarms = dayAlarms(agenda(session, plan, effectiveEvents(events), minute))
  const own = (since: number, now: number) =>
    rungBetween(alarms, since * minute, now * minute).filter(({ item }) => item.unit.id === first)
  const due = (alarms.find(({ item }) => item.unit.id === first)?.at ?? 0) / minute
  expect(own(1, due - 1)).toEqual([])
  expect(own(1, due)).toHaveLength(1)
  expect(own(due, due + 10)).toEqual([])
})

it('calls once to what waits for the hands while its moment slides on, and anew where it was put off', () => {
  const items = agenda(session, plan, [], 0).filter(({ unit }) => unit.id === first)
  const at = (minutes: number) => dayAlarms(items, () => minutes * minute).slice(0, 1)
  const key = at(10)[0]?.key ?? ''
  let called = stillCalled(new Map([[key, 10 * minute]]), at(11), 10.5 * minute)
  expect(called.has(key)).toBe(true)
  expect(notYetCalled(at(11), called)).toEqual([])
  // What sounds at the moment it was called to sounds on.
  expect(notYetCalled(at(10), called)).toHaveLength(1)
  called = stillCalled(called, at(40), 11 * minute)
  expect(notYetCalled(at(40), called)).toHaveLength(1)
  // What was done meanwhile has left the list; taken back by undo it is called to again.
  expect(stillCalled(new Map([[key, 10 * minute]]), [], 11 * minute).size).toBe(0)
})
