import 'fake-indexeddb/auto'
import { describe, expect, test } from 'vitest'
import { earlyLooks, peeks } from '@/core/seal/looks.ts'
import { sealed, sessionUnsealed } from '@/core/seal/sealed.ts'
import type { NewEvent } from '@/core/session/press/new-event.ts'
import { undoTarget } from '@/core/session/undo-target.ts'
import { tastingState } from '@/core/tasting/tasting-state.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { NewBallot, OpenNotebook } from '@/notebook/notebook.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'
import {
  contentOf,
  freshName,
  notebookAtTheTable,
  notebookWithTrial,
  testNow,
} from './notebook-of.ts'

const inSession = { trialId: 'trial-1', sessionId: 'session-1' } as const
const session = { kind: 'session', id: 'session-1' } as const
const batch = { kind: 'batch', id: 'batch-1' } as const
const mix: NewEvent = {
  ...inSession,
  kind: 'step-started',
  stepId: 'step-mix',
  repeat: 1,
  about: batch,
}
const close: NewEvent = { ...inSession, kind: 'tasting-closed', reason: 'late', about: session }
const unseal: NewEvent = { ...inSession, kind: 'unsealed', about: session }
const takeBack = (corrects: string): NewEvent => ({
  ...inSession,
  kind: 'void',
  corrects,
  about: session,
})
const ballot = (about: NewBallot['about'], value: number): NewBallot => ({
  ...inSession,
  tasterId: 'taster-2',
  startedAt: testNow - 60_000,
  about,
  answers: [
    { responseId: 'liking', value },
    { responseId: 'chew', value: 3 },
  ],
})
const serving = (id: string) => ({ kind: 'serving', id }) as const

/** A notebook with the trial of the tests, its log and ballots as given. */
const notebookWith = (change: Partial<WholeTrial>) =>
  notebookWithTrial(freshName(), { ...wholeTrialOf(), ...change })

const freshDay = () => notebookWith({ events: [], ballots: [], photos: [] })

async function trialIn(notebook: OpenNotebook): Promise<WholeTrial> {
  const whole = await notebook.wholeTrial('trial-1')
  if (!whole) throw new Error('the notebook holds the trial')
  return whole
}

const idOf = ({ events }: WholeTrial, kind: NewEvent['kind']) => {
  const event = events.find((each) => each.kind === kind)
  if (!event) throw new Error(`no ${kind}`)
  return event.id
}

/** What follows from the seal of a trial: equal before and after an attack that did nothing. */
const promised = (whole: WholeTrial) => ({
  sealed: sealed(whole),
  unsealed: sessionUnsealed(whole.events, 'session-1'),
  peeks: peeks(whole),
  looks: earlyLooks(whole),
  closed: tastingState(whole, 'session-1').closedBecause,
})

const lastingKinds = ['lock', 'unsealed', 'peeked', 'findings-looked', 'device-taken'] as const

describe('what lasts', () => {
  test.each(lastingKinds)('S1: a void of %s is refused, with all of its press', async (kind) => {
    const notebook = await notebookWithTrial()
    const before = await contentOf(notebook)
    const id = idOf(await trialIn(notebook), kind)
    const note: NewEvent = { ...inSession, kind: 'note', text: 'beside it', about: batch }
    await expect(notebook.logAll([note, takeBack(id)])).rejects.toMatchObject({
      name: 'NotebookFailure',
      reason: 'lasting',
    })
    expect(await contentOf(notebook)).toEqual(before)
  })

  test.each(lastingKinds)('S2: a correction of %s is refused, of whatever kind', async (kind) => {
    const notebook = await notebookWithTrial()
    const before = await contentOf(notebook)
    const corrects = idOf(await trialIn(notebook), kind)
    const note: NewEvent = { ...inSession, kind: 'note', text: 'in its place', about: batch }
    for (const entry of [note, { ...mix, about: batch }, { ...close }])
      await expect(notebook.log({ ...entry, corrects })).rejects.toMatchObject({
        reason: 'lasting',
      })
    expect(await contentOf(notebook)).toEqual(before)
  })

  test('S3: a lasting entry with a time or a citation of its own is refused', async () => {
    const notebook = await notebookAtTheTable()
    const peek: NewEvent = { ...inSession, kind: 'peeked', about: session }
    const refused = { reason: 'refused-record' }
    await expect(notebook.log({ ...peek, at: 1000 })).rejects.toMatchObject(refused)
    const { events } = await trialIn(notebook)
    const corrects = idOf({ ...wholeTrialOf(), events }, 'weighed')
    await expect(notebook.log({ ...peek, corrects })).rejects.toMatchObject(refused)
    expect(await notebook.log(peek)).toMatchObject({ at: testNow })
  })

  test('S4: a file that takes back or corrects what lasts hides nothing', async () => {
    const whole = wholeTrialOf()
    const hiding = lastingKinds.flatMap((kind, index) =>
      (['void', 'note'] as const).map((by, twice) => ({
        ...inSession,
        ...{ id: `attack-${kind}-${by}`, device: 'device-2', count: 1 + 2 * index + twice },
        ...{ at: testNow, zone: 'Europe/Rome', about: session, corrects: idOf(whole, kind) },
        ...(by === 'note' ? { kind: by, text: 'instead' } : { kind: by }),
      })),
    )
    const closing = { ...hiding[0], kind: 'void' as const, id: 'attack-close', count: 90 }
    const corrects = idOf(whole, 'tasting-closed')
    const events = [...whole.events, ...hiding, { ...closing, corrects }] as WholeTrial['events']
    const notebook = await notebookWith({ events })
    const read = await trialIn(notebook)
    expect(read.events.length).toBe(whole.events.length + 11)
    expect(promised(read)).toEqual(promised(whole))
    expect(promised(read)).toMatchObject({
      unsealed: true,
      peeks: [{}],
      looks: [{}],
      closed: 'OK had to go',
    })
    const plan = { ...planInForce(read), plannedSessions: 5 }
    await expect(notebook.keepPlan(plan)).rejects.toMatchObject({ reason: 'locked' })
    await expect(
      notebook.sealBallot({ ...ballot(serving('serving-1'), 9), tasterId: 'taster-1' }),
    ).rejects.toMatchObject({ reason: 'tasting-over' })
  })

  test('S5: an early close is taken back while the codes are kept, and not once they are open', async () => {
    const notebook = await notebookAtTheTable()
    const first = await notebook.log(close)
    await notebook.log(takeBack(first.id))
    await notebook.sealBallot(ballot(serving('serving-2'), 6))
    const second = await notebook.log(close)
    await notebook.log(unseal)
    const refused = { reason: 'lasting' }
    await expect(notebook.log(takeBack(second.id))).rejects.toMatchObject(refused)
    await expect(notebook.log({ ...close, corrects: second.id })).rejects.toMatchObject(refused)
  })

  test('S6: undo never reaches what lasts', async () => {
    const notebook = await freshDay()
    await notebook.log(mix)
    const settings = await notebook.settings()
    const { events } = await trialIn(notebook)
    const target = undoTarget(events, settings.device)
    expect(target?.kind).toBe('step-started')
    await notebook.log(takeBack(target?.id ?? ''))
    expect(undoTarget((await trialIn(notebook)).events, settings.device)).toBeNull()
  })
})

describe('the lock', () => {
  const otherwise = async (notebook: OpenNotebook) => ({
    ...planInForce(await trialIn(notebook)),
    plannedSessions: 5,
  })

  test('S7: the notebook writes the lock with the first mix, once, and refuses another expectation', async () => {
    const notebook = await freshDay()
    await notebook.log(mix)
    await notebook.log({ ...mix, about: { kind: 'batch', id: 'batch-2' } })
    const { events } = await trialIn(notebook)
    expect(events.toSorted((a, b) => a.count - b.count).map(({ kind }) => kind)).toEqual([
      'lock',
      'step-started',
      'step-started',
    ])
    await expect(notebook.keepPlan(await otherwise(notebook))).rejects.toMatchObject({
      reason: 'locked',
    })
    await expect(
      notebook.keepPlan({ ...(await otherwise(notebook)), plannedSessions: 2, expectation: null }),
    ).rejects.toMatchObject({ reason: 'locked' })
  })

  test('S8: with a weight that stands the lock stands, though the mix is taken back', async () => {
    const notebook = await freshDay()
    const begun = await notebook.log(mix)
    await notebook.log({
      ...inSession,
      kind: 'weighed',
      ingredientId: 'salt',
      grams: 6,
      about: batch,
    })
    await notebook.log(takeBack(begun.id))
    await expect(notebook.keepPlan(await otherwise(notebook))).rejects.toMatchObject({
      reason: 'locked',
    })
  })

  test('S9: an undo that leaves nothing made lifts the lock, and the next mix locks anew', async () => {
    const notebook = await freshDay()
    const begun = await notebook.log(mix)
    await notebook.log(takeBack(begun.id))
    expect((await notebook.keepPlan(await otherwise(notebook))).newRevision).toBe(true)
    await notebook.log(mix)
    const { events } = await trialIn(notebook)
    expect(events.filter(({ kind }) => kind === 'lock')).toHaveLength(2)
    await expect(
      notebook.keepPlan({ ...(await otherwise(notebook)), plannedSessions: 3 }),
    ).rejects.toMatchObject({ reason: 'locked' })
  })
})
