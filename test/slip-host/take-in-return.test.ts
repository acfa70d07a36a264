import 'fake-indexeddb/auto'
import { expect, test } from 'vitest'
import { goToBallot } from '@/app/own/ballot-moves.ts'
import { doneField, ownReturn, ownView, responseIdAt, setField } from '@/app/own/own-state.ts'
import { rankedText } from '@/core/seal/blind/ranked-codes.ts'
import { blindView, servingByCode } from '@/core/tasting/blind-view.ts'
import { type BallotSlip, readSlip } from '@/slip/ballot-slip.ts'
import { hostOfTexts } from '@/slip/kept-host.ts'
import { bytesOfLinkText, linkTextOf } from '@/slip/link-text.ts'
import { bytesOfReturn } from '@/slip/return-slip.ts'
import { giveOut, slipsKey } from '@/slip-host/give-out.ts'
import { takeInReturn } from '@/slip-host/take-in-return.ts'
import { madeLog } from '../core/session/made-events.ts'
import { tastingTrial } from '../journeys/tasting-trial.ts'
import { notebookWithTrial } from '../notebook/notebook-of.ts'

test('what a taster picked of a set and the order they gave on their own phone come in as ballots of their own, once', async () => {
  const tellApart = {
    test: 'triangle' as const,
    levelIds: ['level-1', 'level-2'],
    asks: 'Odd one?',
  }
  const made = tastingTrial({ tellApart, atTable: { ranking: { ties: false } } })
  const notebook = await notebookWithTrial(undefined, made)
  const [session] = made.sessions
  const set = session?.dealt.sets.find(({ tasterId }) => tasterId === 'club-1')
  if (!session || !set) throw new Error('a set was dealt')
  const given = { notebook, now: Date.now(), draw: () => 4_000_000_000 }
  const text = await giveOut(given, made, session.id, 'club-1')
  const read = readSlip(bytesOfLinkText(text) ?? new Uint8Array())
  if (!read.ok) throw new Error(read.reason)
  expect(read.slip).toMatchObject({ tellApart: { asks: 'Odd one?' }, ranking: { ties: false } })
  const picked = read.slip.sets[0]?.[2] ?? ''
  const order = read.slip.codes.map((code) => [code])
  const ranked = rankedText(order)
  const texts = { nonce: '4000000000', acts: '2', ranked, [setField(0)]: picked }
  const back = linkTextOf(bytesOfReturn(ownReturn(read.slip, texts), read.slip.key))
  for (const came of ['in', 'already-in']) {
    const host = hostOfTexts(await notebook.draft(slipsKey(session.id)))
    const whole = await notebook.wholeTrial(made.trial.id)
    if (!host || !whole) throw new Error('a host and a trial')
    expect((await takeInReturn(notebook, whole, session.id, host, back)).came).toBe(came)
    const ballots = (await notebook.wholeTrial(made.trial.id))?.ballots ?? []
    expect(ballots).toMatchObject([
      { about: { kind: 'ranking', id: session.id }, ranked: order, answers: [] },
      { about: { kind: 'set', id: set.id }, pickedCode: picked, tasterId: 'club-1', answers: [] },
    ])
  }
})

test('a slip that is out stays good where the oven gives the pieces in another order than was drawn', async () => {
  const made = tastingTrial({ serving: 'as-baked' })
  const notebook = await notebookWithTrial(undefined, made)
  const [session] = made.sessions
  const last = session?.dealt.servings.findLast(({ flightId }) => flightId !== null)
  if (!session || !last) throw new Error('a session that is served')
  const { events, log } = madeLog()
  const give = (whole = made) =>
    giveOut(
      { notebook, now: 1_800_000_000_000, draw: () => 4_000_000_000 },
      whole,
      session.id,
      'club-1',
    )
  const before = await give()
  log({ kind: 'bake-in' }, { about: { kind: 'piece', id: last.pieceId }, at: 1000 })
  const swapped = {
    ...made,
    events: events.map((event) => ({ ...event, sessionId: session.id, trialId: made.trial.id })),
  }
  const next = (whole = made) => blindView(whole, session.id, 'club-1').nextCode
  expect(next(swapped)).toBe(last.code)
  expect(next()).not.toBe(last.code)
  expect(await give(swapped)).toBe(before)
})

/** A phone on which codes are sealed one after another, each two minutes after it was shown. */
function ownPhone(slip: BallotSlip, at: number, nonce = '4000000000') {
  let texts: Record<string, string> = { nonce, acts: '0' }
  let [sealed, moment] = [0, at]
  return {
    view: () => ownView(slip, texts),
    chooses: (chosen: string) => {
      texts = { ...texts, chosen }
    },
    seals: () => {
      const code = ownView(slip, texts).nextCode ?? ''
      const answers = slip.questions.map((_, place) => ({
        ...{ responseId: responseIdAt(place), value: 5 },
      }))
      const own = { answers, words: '', startedAt: moment, sealedAt: moment + 120_000 }
      moment += 180_000
      sealed += 1
      texts = { ...texts, [doneField(code)]: JSON.stringify(own), acts: String(sealed) }
    },
    back: () => linkTextOf(bytesOfReturn(ownReturn(slip, texts), slip.key)),
  }
}

test('as baked, a phone goes to the code that stands on the table, and each ballot keeps at which place it came; rested it keeps the order dealt', async () => {
  for (const serving of ['as-baked', 'rested'] as const) {
    const made = tastingTrial({ serving })
    const notebook = await notebookWithTrial(undefined, made)
    const [session] = made.sessions
    if (!session) throw new Error('a session')
    const now = Date.now()
    const given = { notebook, now, draw: () => 4_000_000_000 }
    const text = await giveOut(given, made, session.id, 'club-1')
    const read = readSlip(bytesOfLinkText(text) ?? new Uint8Array())
    if (!read.ok) throw new Error(read.reason)
    const phone = ownPhone(read.slip, now)
    const [first = '', second = '', ...rest] = read.slip.codes
    expect(phone.view().nextCode).toBe(first)
    phone.chooses(second)
    const swaps = serving === 'as-baked'
    const tasted = swaps ? [second, first, ...rest] : [first, second, ...rest]
    for (const [at, code] of tasted.entries()) {
      const { nextCode, servings } = phone.view()
      expect(nextCode).toBe(code)
      expect(servings.find((one) => one.code === code)?.position).toBe(at + 1)
      phone.seals()
      const host = hostOfTexts(await notebook.draft(slipsKey(session.id)))
      const whole = await notebook.wholeTrial(made.trial.id)
      if (!host || !whole) throw new Error('a host and a trial')
      const came = await takeInReturn(notebook, whole, session.id, host, phone.back())
      expect(came).toMatchObject({ came: at === 0 ? 'in' : 'replaced', odd: '' })
    }
    const ballots = (await notebook.wholeTrial(made.trial.id))?.ballots ?? []
    const positionOf = (code: string) =>
      ballots.find(({ about }) => about.id === servingByCode(session, code)?.id)?.position
    expect(tasted.map(positionOf)).toEqual(tasted.map((_, at) => (swaps ? at + 1 : undefined)))
  }
})

test('as baked, who goes on at another phone tasted there what comes after, and a later word of the first moves nothing', async () => {
  const made = tastingTrial({ serving: 'as-baked' })
  const notebook = await notebookWithTrial(undefined, made)
  const [session] = made.sessions
  if (!session) throw new Error('a session')
  const now = Date.now()
  const text = await giveOut(
    { notebook, now, draw: () => 4_000_000_000 },
    made,
    session.id,
    'club-1',
  )
  const read = readSlip(bytesOfLinkText(text) ?? new Uint8Array())
  if (!read.ok) throw new Error(read.reason)
  const [first = '', second = '', third = '', fourth = ''] = read.slip.codes
  const one = ownPhone(read.slip, now)
  const other = ownPhone(read.slip, now, '4000000001')
  const takeIn = async (phone: typeof one) => {
    const host = hostOfTexts(await notebook.draft(slipsKey(session.id)))
    const whole = await notebook.wholeTrial(made.trial.id)
    if (!host || !whole) throw new Error('a host and a trial')
    return takeInReturn(notebook, whole, session.id, host, phone.back(), 'anyway')
  }
  const sealing = (phone: typeof one, code: string) => {
    phone.chooses(code)
    phone.seals()
  }
  for (const code of [first, second]) sealing(one, code)
  await takeIn(one)
  sealing(other, third)
  await takeIn(other)
  sealing(one, fourth)
  await takeIn(one)
  const ballots = (await notebook.wholeTrial(made.trial.id))?.ballots ?? []
  const positionsOf = (code: string) =>
    ballots
      .filter(({ about }) => about.id === servingByCode(session, code)?.id)
      .map(({ position }) => position)
  expect([first, second, third, fourth].map(positionsOf)).toEqual([[1], [2], [3], [4]])
})

test('going to another code forgets a ballot that was only looked at, leaves what was pressed, or takes it along', async () => {
  const notebook = await notebookWithTrial(undefined, tastingTrial())
  const looked = { startedAt: '1000' }
  const pressed = { startedAt: '2000', 'value/q0': '6' }
  const other = { startedAt: '3000', 'value/q0': '4' }
  const kept = async () => [await notebook.draft('a'), await notebook.draft('b')]
  const go = (along: boolean) => goToBallot(notebook, { from: 'a', to: 'b', along })
  await notebook.keepDraft('a', looked)
  await go(true)
  expect(await kept()).toEqual([undefined, undefined])
  await notebook.keepDraft('a', pressed)
  await go(false)
  expect(await kept()).toEqual([pressed, undefined])
  await go(true)
  expect(await kept()).toEqual([undefined, pressed])
  await notebook.keepDraft('a', other)
  await go(true)
  expect(await kept()).toEqual([pressed, other])
})
