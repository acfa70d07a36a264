import 'fake-indexeddb/auto'
import { describe, expect, test } from 'vitest'
import { sealed } from '@/core/seal/sealed.ts'
import { toTurn, turnedOf } from '@/core/tasting/to-turn.ts'
import { observations } from '@/core/whole-trial/observations.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { OpenNotebook } from '@/notebook/notebook.ts'
import { aloneTrial } from '../core/tasting/alone-trial.ts'
import { freshName, notebookWithTrial } from './notebook-of.ts'

async function trialIn(notebook: OpenNotebook): Promise<WholeTrial> {
  const whole = await notebook.wholeTrial('trial-1')
  if (!whole) throw new Error('the notebook holds the trial')
  return whole
}

const answers = ['liking', 'chew', 'smell'].map((responseId) => ({ responseId, value: 3 }))

/** One person has scored everything and guessed, plates not turned yet. */
async function scored(atTable: Parameters<typeof aloneTrial>[0]) {
  const notebook = await notebookWithTrial(freshName(), aloneTrial(atTable))
  const [session] = (await trialIn(notebook)).sessions
  if (!session) throw new Error('a session')
  const inSession = { trialId: 'trial-1', sessionId: session.id }
  const by = { ...inSession, tasterId: 'club-1' }
  await notebook.log({ ...inSession, kind: 'present', about: { kind: 'taster', id: 'club-1' } })
  for (const id of session.dealt.tasterOrders[0]?.servingIds ?? [])
    await notebook.sealBallot({ ...by, about: { kind: 'serving', id }, answers })
  const guess = { kind: 'session', id: session.id } as const
  await notebook.sealBallot({ ...by, about: guess, answers: [], guessOf: 'most' })
  const log = (kind: 'plates-turned' | 'unsealed') =>
    notebook.log({ ...inSession, kind, about: guess })
  return { notebook, session, by, inSession, log }
}

/** Letters as they rise, tickets as they were dealt: one of the ways in which all is turned. */
async function oneWay(notebook: OpenNotebook) {
  const whole = await trialIn(notebook)
  const [session] = whole.sessions
  const wanted = session && toTurn(whole, session.id)
  if (!session || !wanted) throw new Error('to turn')
  const letters = Object.fromEntries(
    wanted.rounds.flatMap(({ plates, letters }) =>
      plates.map(({ key }, at) => [key, letters[at] ?? '']),
    ),
  )
  const tickets = Object.fromEntries(
    wanted.doughs.map(({ batchId }, at) => [batchId, wanted.tickets.at(-1 - at)?.ticket ?? '']),
  )
  const turned = turnedOf(session, wanted, letters, tickets)
  if (!turned) throw new Error('all turned')
  return { turned, session, wanted }
}

describe('plates and cups', () => {
  test('S19: without what lay under the plates nothing is unsealed, and with half of it neither', async () => {
    const { notebook, session, log } = await scored({ shuffledPlates: true })
    const refused = { reason: 'refused-record' }
    await expect(log('unsealed')).rejects.toMatchObject(refused)
    const { turned } = await oneWay(notebook)
    const named = { trialId: 'trial-1', sessionId: session.id, cups: [] }
    await expect(
      notebook.turnOver({ ...named, turned: { plates: turned.plates?.slice(1) ?? [] } }),
    ).rejects.toMatchObject(refused)
    expect(sealed(await trialIn(notebook))).toBe(true)
    await notebook.turnOver({ ...named, turned })
    const whole = await trialIn(notebook)
    expect(sealed(whole)).toBe(false)
    const found = new Map(turned.plates?.map(({ servingId, pieceId }) => [servingId, pieceId]))
    for (const { id, pieceId } of whole.sessions[0]?.dealt.servings ?? [])
      expect(pieceId).toBe(found.get(id))
  })

  test('S20: once the plates are being turned, no ballot is taken and the turning is not taken back', async () => {
    const { notebook, by, inSession, session, log } = await scored({ shuffledPlates: true })
    const turning = await log('plates-turned')
    const [first] = session.dealt.tasterOrders[0]?.servingIds ?? []
    await expect(
      notebook.sealBallot({ ...by, about: { kind: 'serving', id: first ?? '' }, answers }),
    ).rejects.toMatchObject({ reason: 'tasting-over' })
    await expect(
      notebook.log({ ...inSession, kind: 'void', about: turning.about, corrects: turning.id }),
    ).rejects.toMatchObject({ reason: 'lasting' })
  })

  test('S21: with cups nothing tells a level before the tickets are turned, and then their weights count', async () => {
    const start = await notebookWithTrial(freshName(), aloneTrial({ cups: true }))
    const fresh = await trialIn(start)
    expect(sealed(fresh)).toBe(true)
    expect(observations(fresh, { unsealed: false })).toMatchObject({ reason: 'still-sealed' })
    const { notebook, session, inSession, log } = await scored({ cups: true })
    await expect(log('unsealed')).rejects.toMatchObject({ reason: 'refused-record' })
    const [batch] = session.batches
    const about = { kind: 'batch', id: batch?.id ?? '' } as const
    await notebook.log({
      ...inSession,
      kind: 'weighed',
      about,
      ingredientId: 'water',
      grams: 130,
    })
    const { turned } = await oneWay(notebook)
    const cups = session.batches.map(({ id }) => ({
      ...{ batchId: id, ingredientId: 'water', grams: 7.5 },
    }))
    await notebook.turnOver({ ...inSession, turned, cups })
    const whole = await trialIn(notebook)
    expect(whole.sessions[0]?.batches.map(({ id, levelId }) => [id, levelId]).toSorted()).toEqual(
      turned.doughs?.map(({ batchId, levelId }) => [batchId, levelId]).toSorted(),
    )
    // Only where the common share was logged does the cup belong beside it.
    expect(
      whole.events.flatMap((event) =>
        event.kind === 'weighed' ? [[event.about.id, event.grams]] : [],
      ),
    ).toEqual([
      [about.id, 130],
      [about.id, 7.5],
    ])
  })
})
