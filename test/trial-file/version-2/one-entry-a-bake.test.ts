import { describe, expect, test } from 'vitest'
import { bakes } from '@/core/session/bakes.ts'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import type { Event } from '@/core/session/event-record.ts'
import { eventShape } from '@/core/session/event-record.ts'
import { stepRuns } from '@/core/session/step-runs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { referenceTroubles } from '@/core/whole-trial/reference-troubles.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { oneEntryABake } from '@/trial-file/version-2/one-entry-a-bake.ts'
import { madeLog } from '../../core/session/made-events.ts'
import { wholeTrialOf } from '../../whole-trial-of.ts'

const minutes = (many: number) => many * 60_000
const stepOf = { stepId: 'step-bake', repeat: 1 }
const dough = { kind: 'batch', id: 'batch-1' } as const
const piece = (id: string) => ({ kind: 'piece' as const, id })
const pieceIds = ['piece-0', 'piece-1']

/** A log as version 1 wrote it; its presses stand at one moment. */
function oldLog() {
  const { events, log } = madeLog('session-1')
  const press = (end: 'in' | 'out', about: { kind: 'batch' | 'piece'; id: string }, at: number) => [
    log({ kind: end === 'in' ? 'step-started' : 'step-stopped', ...stepOf }, { about, at }),
    ...(about.kind === 'batch' ? pieceIds : [about.id]).map((id) =>
      log({ kind: `bake-${end}` }, { about: piece(id), at }),
    ),
  ]
  const cite = (event: Event | undefined, kind: Event['kind'], at = 0) => {
    if (!event) throw new Error('nothing to cite')
    const { id, about } = event
    if (kind === 'void') return log({ kind, corrects: id }, { about, at })
    const said = 'stepId' in event ? stepOf : {}
    return log({ kind, ...said, corrects: id } as Parameters<typeof log>[0], { about, at })
  }
  return { events, press, cite }
}

/** The log brought up, proved sound: every entry fits its shape and names only what is there. */
function broughtUp(events: readonly Event[], per: 'piece' | 'batch') {
  const made = wholeTrialOf()
  const plans = made.plans.map(
    (plan): Plan => ({
      ...plan,
      steps: plan.steps.map((step) => (step.kind === 'bake' ? { ...step, per } : step)),
    }),
  )
  const trialId = made.trial.id
  const whole = { ...made, plans, events: events.map((event) => ({ ...event, trialId })) }
  const brought = oneEntryABake(whole) as unknown as WholeTrial
  for (const event of brought.events) expect(eventShape.safeParse(event).success).toBe(true)
  expect(referenceTroubles(brought)).toEqual([])
  const [session] = brought.sessions
  const plan = plans.find(({ id }) => id === session?.planId)
  if (!session || !plan) throw new Error('the made trial has a session')
  const standing = effectiveEvents(brought.events)
  const minute = (at: number | null) => (at === null ? null : at / 60_000)
  return {
    kinds: brought.events.map(({ kind }) => kind),
    events: brought.events,
    baked: Object.fromEntries(
      bakes(session, standing).map((one) => [
        ...[one.pieceId, [minute(one.inAt), minute(one.outAt)]],
      ]),
    ) as Record<string, (number | null)[]>,
    run: Object.fromEntries(
      stepRuns(session, plan, standing).flatMap(({ unit, step, startedAt, stoppedAt }) =>
        step.kind === 'bake' ? [[unit.id, [minute(startedAt), minute(stoppedAt)]]] : [],
      ),
    ) as Record<string, (number | null)[]>,
  }
}

describe('a bake that version 1 wrote twice', () => {
  test('of a piece the oven’s entries are kept, and name the step', () => {
    const { events, press } = oldLog()
    press('in', piece('piece-2'), minutes(10))
    press('out', piece('piece-2'), minutes(30))
    const now = broughtUp(events, 'piece')
    expect(now.events).toMatchObject([
      { kind: 'bake-in', about: piece('piece-2'), ...stepOf },
      { kind: 'bake-out', about: piece('piece-2'), ...stepOf },
    ])
    expect(now.events).toHaveLength(2)
    expect([now.baked['piece-2'], now.run['piece-2']]).toEqual([
      [10, 30],
      [10, 30],
    ])
  })

  test('of a dough baked whole one entry is kept, with its pieces', () => {
    const { events, press } = oldLog()
    press('in', dough, minutes(10))
    press('out', dough, minutes(30))
    const now = broughtUp(events, 'batch')
    expect(now.events).toHaveLength(2)
    expect(now.events).toMatchObject([
      { id: 'e-1', kind: 'bake-in', about: dough, ...stepOf, pieceIds },
      { id: 'e-4', kind: 'bake-out', about: dough, ...stepOf, pieceIds },
    ])
    expect([now.baked['piece-0'], now.baked['piece-1'], now.run['batch-1']]).toEqual([
      [10, 30],
      [10, 30],
      [10, 30],
    ])
  })

  test.each([
    ['the step was corrected', 0, 'step-stopped'],
    ['the piece was corrected', 1, 'bake-out'],
  ] as const)('%s: the correction stands for both', (_, which, kind) => {
    const { events, press, cite } = oldLog()
    press('in', piece('piece-2'), minutes(10))
    const out = press('out', piece('piece-2'), minutes(30))
    const mend = cite(out[which], kind, minutes(28))
    cite(mend, kind, minutes(27))
    const now = broughtUp(events, 'piece')
    expect(now.kinds).toEqual(['bake-in', 'bake-out', 'bake-out', 'bake-out'])
    expect([now.baked['piece-2'], now.run['piece-2']]).toEqual([
      [10, 27],
      [10, 27],
    ])
  })

  test('both were corrected: the later word stands, and once that is taken back the other', () => {
    const { events, press, cite } = oldLog()
    press('in', piece('piece-2'), minutes(10))
    const out = press('out', piece('piece-2'), minutes(30))
    cite(out[1], 'bake-out', minutes(29))
    const later = cite(out[0], 'step-stopped', minutes(28))
    expect(broughtUp(events, 'piece').baked['piece-2']).toEqual([10, 28])
    cite(later, 'void')
    const now = broughtUp(events, 'piece')
    expect([now.baked['piece-2'], now.run['piece-2']]).toEqual([
      [10, 29],
      [10, 29],
    ])
  })

  test('what one undo took back is gone with its takings back; the next press stands', () => {
    const { events, press, cite } = oldLog()
    for (const event of press('in', dough, minutes(10)).toReversed()) cite(event, 'void')
    press('in', dough, minutes(12))
    const now = broughtUp(events, 'batch')
    expect(now.kinds).toEqual(['bake-in', 'void', 'bake-in'])
    expect([now.baked['piece-1'], now.run['batch-1']]).toEqual([
      [12, null],
      [12, null],
    ])
  })

  test('the step alone was taken back: the piece had begun it all the same', () => {
    const { events, press, cite } = oldLog()
    const begun = press('in', piece('piece-2'), minutes(10))
    cite(cite(begun[0], 'void'), 'void')
    cite(begun[0], 'void')
    const now = broughtUp(events, 'piece')
    expect(now.kinds).toEqual(['bake-in'])
    expect(now.run['piece-2']).toEqual([10, null])
  })

  test('the piece alone was taken back: the step that stands keeps what it says', () => {
    const { events, press, cite } = oldLog()
    const begun = press('in', piece('piece-2'), minutes(10))
    cite(begun[1], 'void')
    const now = broughtUp(events, 'piece')
    expect(now.kinds).toEqual(['step-started', 'bake-in', 'void'])
    expect([now.baked['piece-2'], now.run['piece-2']]).toEqual([
      [null, null],
      [10, null],
    ])
  })

  test('of a dough baked whole a piece with a time of its own keeps its entry', () => {
    const { events, press, cite } = oldLog()
    press('in', dough, minutes(10))
    const out = press('out', dough, minutes(30))
    cite(out[2], 'bake-out', minutes(26))
    const now = broughtUp(events, 'batch')
    expect(now.kinds).toEqual(['bake-in', 'bake-out', 'bake-out', 'bake-out'])
    expect([now.baked['piece-0'], now.baked['piece-1'], now.run['batch-1']]).toEqual([
      [10, 30],
      [10, 26],
      [10, 30],
    ])
  })

  test('of a dough baked whole the corrected step takes its pieces along, and pieces that agree the step', () => {
    const { events, press, cite } = oldLog()
    const begun = press('in', dough, minutes(10))
    cite(begun[0], 'step-started', minutes(9))
    const out = press('out', dough, minutes(30))
    cite(out[1], 'bake-out', minutes(27))
    cite(out[2], 'bake-out', minutes(27))
    const now = broughtUp(events, 'batch')
    expect(now.kinds).toEqual(['bake-in', 'bake-in', 'bake-out', 'bake-out'])
    expect([now.baked['piece-0'], now.baked['piece-1'], now.run['batch-1']]).toEqual([
      [9, 27],
      [9, 27],
      [9, 27],
    ])
  })

  test('what was logged of a piece alone keeps its moment, and other steps are left alone', () => {
    const { events, press } = oldLog()
    press('in', dough, minutes(10))
    const { log } = { log: madeLog('session-1').log }
    const alone = log({ kind: 'bake-out' }, { about: piece('piece-1'), at: minutes(20), id: 'out' })
    const mix = { kind: 'step-started', stepId: 'step-mix', repeat: 1 } as const
    const mixed = log(mix, { about: dough, at: minutes(20), id: 'mix' })
    const now = broughtUp([...events, { ...alone, count: 90 }, { ...mixed, count: 91 }], 'batch')
    expect(now.kinds).toEqual(['bake-in', 'bake-out', 'step-started'])
    expect([now.baked['piece-1'], now.run['batch-1']]).toEqual([
      [10, 20],
      [10, null],
    ])
  })
})
