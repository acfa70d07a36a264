import 'fake-indexeddb/auto'
import { describe, expect, test } from 'vitest'
import { earlyLooks, peeks } from '@/core/seal/looks.ts'
import { sealed } from '@/core/seal/sealed.ts'
import { trialCover } from '@/core/seal/trial-cover.ts'
import type { NewEvent } from '@/core/session/press/new-event.ts'
import { blindView } from '@/core/tasting/blind-view.ts'
import { effectiveBallots } from '@/core/tasting/effective-ballots.ts'
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
  trialAtTheTable,
} from './notebook-of.ts'

const inSession = { trialId: 'trial-1', sessionId: 'session-1' } as const
const session = { kind: 'session', id: 'session-1' } as const
const taster = (id: string) => ({ kind: 'taster', id }) as const
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

describe('the seal', () => {
  test('S10: the first serving seals, and closing early does not unseal', async () => {
    const notebook = await freshDay()
    expect(sealed(await trialIn(notebook))).toBe(false)
    await notebook.log({ ...inSession, kind: 'served', about: serving('serving-1') })
    expect(sealed(await trialIn(notebook))).toBe(true)
    await notebook.log(close)
    expect(sealed(await trialIn(notebook))).toBe(true)
    await notebook.log(unseal)
    expect(sealed(await trialIn(notebook))).toBe(false)
  })

  test('S11: unsealing is refused while somebody is awaited or a ballot is missing', async () => {
    const early = { reason: 'still-awaited' }
    const untouched = await freshDay()
    await expect(untouched.log(unseal)).rejects.toMatchObject(early)
    const notebook = await notebookAtTheTable()
    await expect(notebook.log(unseal)).rejects.toMatchObject(early)
    await expect(notebook.logAll([close, unseal])).rejects.toMatchObject(early)
    expect(sealed(await trialIn(notebook))).toBe(true)
    await notebook.log({ ...inSession, kind: 'declined', about: taster('taster-2') })
    await notebook.log(unseal)
    expect(sealed(await trialIn(notebook))).toBe(false)
  })

  test.each([
    ['closed', [close]],
    ['unsealed', [close, unseal]],
  ] as const)('S12: once %s no ballot is added or replaced', async (_, over) => {
    const notebook = await notebookAtTheTable()
    const own = await notebook.sealBallot(ballot(serving('serving-2'), 6))
    for (const event of over) await notebook.log(event)
    const before = await contentOf(notebook)
    for (const late of [
      ballot(serving('serving-1'), 2),
      { ...ballot(serving('serving-2'), 2), replaces: own.id },
    ])
      await expect(notebook.sealBallot(late)).rejects.toMatchObject({ reason: 'tasting-over' })
    expect(await contentOf(notebook)).toEqual(before)
  })

  test('S17: a late ballot is kept apart and counts for nothing; none is late before', async () => {
    const notebook = await notebookAtTheTable()
    const late: NewBallot = { ...ballot(serving('serving-1'), 2), late: true }
    await expect(notebook.sealBallot(late)).rejects.toMatchObject({ reason: 'refused-record' })
    await notebook.log(close)
    const before = tastingState(await trialIn(notebook), 'session-1')
    const kept = await notebook.sealBallot(late)
    const whole = await trialIn(notebook)
    expect(whole.ballots.find(({ id }) => id === kept.id)).toMatchObject({ late: true })
    expect(effectiveBallots(whole.ballots).some(({ id }) => id === kept.id)).toBe(false)
    expect(tastingState(whole, 'session-1')).toEqual(before)
  })

  test('S18: a changed or voided ballot leaves the first, with who and why; voided is awaited again', async () => {
    const notebook = await notebookAtTheTable()
    const own = await notebook.sealBallot(ballot(serving('serving-2'), 6))
    const changed = await notebook.sealBallot({
      ...ballot(serving('serving-2'), 4),
      replaces: own.id,
      change: { by: 'OK', because: 'a slip of the thumb' },
    })
    const missing = async () =>
      tastingState(await trialIn(notebook), 'session-1').missing.filter(
        ({ tasterId }) => tasterId === 'taster-2',
      ).length
    const open = await missing()
    await notebook.sealBallot({
      ...ballot(serving('serving-2'), 4),
      answers: [],
      replaces: changed.id,
      change: { by: 'OK', because: 'it was the wrong plate', voids: true },
    })
    const { ballots } = await trialIn(notebook)
    expect(ballots.find(({ id }) => id === own.id)).toEqual(own)
    expect(ballots.find(({ id }) => id === changed.id)).toEqual(changed)
    expect(await missing()).toBe(open + 1)
    // Asked again they seal as if it were the first time, once.
    const anew = await notebook.sealBallot(ballot(serving('serving-2'), 8))
    expect(await missing()).toBe(open)
    const counting = effectiveBallots((await trialIn(notebook)).ballots).filter(
      ({ tasterId, about }) => tasterId === 'taster-2' && about.id === 'serving-2',
    )
    expect(counting).toEqual([anew])
    await expect(notebook.sealBallot(ballot(serving('serving-2'), 9))).rejects.toMatchObject({
      reason: 'refused-record',
    })
    const { replaces: _, ...loose } = { ...ballot(serving('serving-1'), 4), replaces: own.id }
    const nameless = { ...loose, change: { by: 'OK', because: 'no reason' } }
    await expect(notebook.sealBallot(nameless)).rejects.toMatchObject({ reason: 'refused-record' })
  })

  test('S13: the line of a sealed trial holds no level and no answer', async () => {
    const { plans, events } = trialAtTheTable()
    const notebook = await notebookWith({
      plans: plans.map((plan) => ({ ...plan, question: 'Is 66.4 better than 73.2?' })),
      events,
    })
    const revision = (await trialIn(notebook)).trial.revision
    await notebook.keepAnswer('trial-1', revision, '73.2 is better')
    const [line] = await notebook.summaries()
    expect(line).toMatchObject({ sealed: true, question: 'A trial under cover', levels: [] })
    expect(JSON.stringify(line)).not.toMatch(/66\.4|73\.2/)
  })
})

test('S14: an early look and a look behind the codes are told for good', async () => {
  const notebook = await notebookAtTheTable()
  const about = { kind: 'trial', id: 'trial-1' } as const
  const peek = await notebook.log({ ...inSession, kind: 'peeked', about: session })
  await notebook.logAll([close])
  await notebook.log(unseal)
  const look = await notebook.log({ ...inSession, kind: 'findings-looked', about })
  for (const id of [peek.id, look.id])
    await expect(notebook.log(takeBack(id))).rejects.toMatchObject({ reason: 'lasting' })
  const whole = await trialIn(notebook)
  expect(peeks(whole)).toHaveLength(1)
  expect(earlyLooks(whole)).toEqual([{ at: testNow, sessionId: 'session-1', reason: null }])
})

test('S15: the blind view of a trial in the notebook tells nothing, and its taster their own answers', async () => {
  const notebook = await notebookAtTheTable()
  await notebook.sealBallot(ballot(serving('serving-2'), 6))
  const whole = await trialIn(notebook)
  const view = blindView(whole, 'session-1', 'taster-2')
  const text = JSON.stringify(view)
  const [made] = whole.sessions
  const secrets = [
    ...planInForce(whole).levels.flatMap(({ id, value }) => [id, String(value)]),
    ...(made ? [...made.batches, ...made.pieces, ...made.dealt.servings] : []).map(({ id }) => id),
    ...(made?.dealt.letters.map(({ letter }) => `"${letter}"`) ?? []),
  ]
  expect(secrets.length).toBeGreaterThan(8)
  expect(secrets.filter((secret) => text.includes(secret))).toEqual([])
  expect(view.servings.map(({ sealed: own }) => own?.answers[0]?.value ?? null)).toContain(6)
  // Another taster's answer of the same trial was 7: it is not in this view.
  expect(text).not.toContain('"value":7')
})

test('S16: while it is sealed every place is under cover, whatever was tried against the seal', async () => {
  const notebook = await notebookAtTheTable()
  const served = (await trialIn(notebook)).events.filter(({ kind }) => kind === 'served')
  await notebook.logAll(served.map(({ id }) => takeBack(id)))
  const whole = await trialIn(notebook)
  for (const place of ['plan', 'bench', 'tasting', 'findings', 'report']) {
    const cover = trialCover(planInForce(whole), whole, place, false)
    expect(cover.covered).toBe(true)
    const codes = cover.codes.map(({ code }) => Number(code))
    expect(codes).toEqual(codes.toSorted((a, b) => a - b))
    expect(codes.length).toBeGreaterThan(1)
  }
})
