import 'fake-indexeddb/auto'
import { expect, test } from 'vitest'
import { doneField, ownReturn, responseIdAt } from '@/app/own/own-state.ts'
import { readSlip } from '@/slip/ballot-slip.ts'
import { hostOfTexts } from '@/slip/kept-host.ts'
import { bytesOfLinkText, linkTextOf } from '@/slip/link-text.ts'
import { bytesOfReturn } from '@/slip/return-slip.ts'
import { giveOut, slipsKey } from '@/slip-host/give-out.ts'
import { takeInReturn } from '@/slip-host/take-in-return.ts'
import { tastingTrial } from '../journeys/tasting-trial.ts'
import { notebookWithTrial } from '../notebook/notebook-of.ts'

test('a later word of the same phone adds what is new, and writes nothing again that it says as before', async () => {
  const made = tastingTrial()
  const notebook = await notebookWithTrial(undefined, made)
  const [session] = made.sessions
  if (!session) throw new Error('a session')
  const at = Date.now()
  const given = { notebook, now: at, draw: () => 4_000_000_000 }
  const text = await giveOut(given, made, session.id, 'club-1')
  const read = readSlip(bytesOfLinkText(text) ?? new Uint8Array())
  if (!read.ok) throw new Error(read.reason)
  const { slip } = read
  const answers = slip.questions.map((_, place) => ({ responseId: responseIdAt(place), value: 3 }))
  const sealed = JSON.stringify({ answers, words: '', startedAt: at, sealedAt: at + 9000 })
  for (const through of [1, 2, 3]) {
    const done = slip.codes.slice(0, through).map((code) => [doneField(code), sealed])
    const texts = { nonce: '4000000000', acts: String(through), ...Object.fromEntries(done) }
    const back = linkTextOf(bytesOfReturn(ownReturn(slip, texts), slip.key))
    const host = hostOfTexts(await notebook.draft(slipsKey(session.id)))
    const whole = await notebook.wholeTrial(made.trial.id)
    if (!host || !whole) throw new Error('a host and a trial')
    await takeInReturn(notebook, whole, session.id, host, back, 'where-none-stands')
    const ballots = (await notebook.wholeTrial(made.trial.id))?.ballots ?? []
    expect(ballots.map(({ replaces }) => replaces)).toEqual(Array(through).fill(undefined))
  }
})
