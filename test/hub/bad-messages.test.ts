import 'fake-indexeddb/auto'
import type { NatsConnection } from '@nats-io/nats-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { Event } from '@/core/session/event-record.ts'
import { invite } from '@/exchange/open-table.ts'
import { heardKey, type Invited, type OwnTable } from '@/exchange/table-store.ts'
import { wrappedBy } from '@/exchange/wrapped.ts'
import { findServer } from '@/hub/find-server.ts'
import { mostEnvelopeBytes } from '@/table/envelope.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { tastingTrial } from '../journeys/tasting-trial.ts'
import { type Device, goesOffline, newDevice, opens, wholeOf } from './at-a-table.ts'
import { patience } from './patience.ts'
import { connectAs, joinAs, type RunningHub, runHub } from './running-hub.ts'

const whole = tastingTrial()
const { id: trialId } = whole.trial
const [session] = whole.sessions
if (!session) throw new Error('a session')
const soon = { timeout: patience, interval: 30 }

let hub: RunningHub
let owner: Device
let own: OwnTable
let bench: Invited
let line: NatsConnection
/** Four notes as another device wrote them. */
let notes: Event[]

/** The message that a device of `by` would send under `subject`, for a table of this name. */
async function sealed(count: number, entry: object, { by = bench, table = own.table } = {}) {
  const { fromDevice } = await wrappedBy(by.secret)
  const outside = { table, subject: `w.${bench.login.name}`, count }
  return await fromDevice.close(
    outside,
    JSON.stringify({ seat: 'seat-1', sentAt: Date.now(), entry }),
  )
}
const ofNote = (at: number) => ({ kind: 'log', event: notes[at] })
const puts = async (bytes: Uint8Array, subject = `w.${bench.login.name}`, by = line) => {
  const answer = await by.request(subject, bytes, { timeout: patience })
  expect(answer.json()).toMatchObject({ stream: 'W' })
}
const written = async () =>
  (await wholeOf(owner.notebook, trialId)).events.flatMap((event) =>
    event.kind === 'note' ? [event.text] : [],
  )
const counts = async () => {
  const { foreign = 0, repeated = 0 } = (await owner.services.store.counts.get(trialId)) ?? {}
  return { foreign, repeated }
}
const receipt = async () =>
  (await owner.services.store.heard.get(heardKey(trialId, bench.login.name, 'seat-1')))?.receipt

describe.skipIf(!findServer())('what comes to a table and is not as it should be', () => {
  beforeAll(async () => {
    hub = await runHub()
    const [ticket] = hub.tickets
    owner = newDevice(ticket)
    await owner.notebook.importTrial(writeTrialFile(whole))
    await opens(owner, trialId, ticket)
    bench = await invite(owner.services, trialId, { part: 'bench', tasterId: null, sealed: true })
    const kept = await owner.services.store.own.get(trialId)
    if (!kept) throw new Error('no table')
    own = kept
    const elsewhere = newDevice(ticket).notebook
    await elsewhere.importTrial(writeTrialFile(whole))
    const about = { kind: 'batch' as const, id: session.batches[0]?.id ?? '' }
    for (const text of ['one', 'two', 'three', 'four'])
      await elsewhere.log({ trialId, sessionId: session.id, kind: 'note', text, about })
    notes = (await wholeOf(elsewhere, trialId)).events.filter(({ kind }) => kind === 'note')
    line = await connectAs(ticket, bench.login)
  })
  afterAll(async () => {
    await line?.close()
    if (owner) await goesOffline(owner)
    await hub?.stop()
  })

  test('foreign, altered, from another table or login, of no shape, too large: nothing changes, each is counted', async () => {
    await puts(await sealed(1, ofNote(0)))
    await expect.poll(written, soon).toEqual(['one'])
    const before = await wholeOf(owner.notebook, trialId)
    const other = await invite(owner.services, trialId, {
      ...{ part: 'oven' as const, tasterId: null, sealed: true },
    })
    const altered = await sealed(2, ofNote(1))
    altered[40] = (altered[40] ?? 0) ^ 1
    const inClear = await sealed(2, ofNote(1), { by: { ...bench, secret: null } })
    const bad = [
      new Uint8Array(0),
      crypto.getRandomValues(new Uint8Array(300)),
      new Uint8Array(mostEnvelopeBytes),
      altered,
      inClear,
      await sealed(2, ofNote(1), { by: other }),
      await sealed(2, ofNote(1), { table: 'ANOTHER2' }),
      await sealed(2, { kind: 'log', event: { ...notes[1], kind: 'no-such-kind' } }),
      await sealed(2, { kind: 'order', text: 'unseal' }),
    ]
    for (const bytes of bad) await puts(bytes)
    // A login that the owner's device never invited, though its key would allow one.
    const stranger = await joinAs(hub.tickets[0], 'bench', 'ZZZZ2222')
    await puts(await sealed(2, ofNote(1)), 'w.ZZZZ2222', stranger)
    await stranger.close()
    await expect.poll(counts, soon).toEqual({ foreign: bad.length + 1, repeated: 0 })
    expect(await wholeOf(owner.notebook, trialId)).toEqual(before)
    expect(await receipt()).toEqual({ to: 1, missing: [] })
  })

  test('the same again and what is too far ahead change nothing and are counted', async () => {
    const before = await wholeOf(owner.notebook, trialId)
    const { foreign } = await counts()
    await puts(await sealed(1, ofNote(0)))
    await puts(await sealed(1, ofNote(1)))
    await puts(await sealed(5000, ofNote(2)))
    await expect.poll(counts, soon).toEqual({ foreign, repeated: 3 })
    expect(await wholeOf(owner.notebook, trialId)).toEqual(before)
  })

  test('an entry that only the baker may write is refused with its reason, and what lasts stays', async () => {
    const { text: _, ...stamp } = { text: '', ...notes[0] }
    const before = await wholeOf(owner.notebook, trialId)
    const event = { ...stamp, id: 'unsealing-1', kind: 'unsealed' }
    await puts(await sealed(2, { kind: 'log', event }))
    const heard = heardKey(trialId, bench.login.name, 'seat-1')
    await expect
      .poll(async () => (await owner.services.store.heard.get(heard))?.refused, soon)
      .toEqual([{ count: 2, reason: 'bakers-own' }])
    expect(await wholeOf(owner.notebook, trialId)).toEqual(before)
  })

  test('what comes out of order is taken once each, the gap is told until it is filled', async () => {
    const from = (await receipt())?.to ?? 0
    await puts(await sealed(from + 3, ofNote(3)))
    await expect.poll(receipt, soon).toEqual({ to: from + 3, missing: [from + 1, from + 2] })
    await puts(await sealed(from + 2, ofNote(2)))
    await puts(await sealed(from + 1, ofNote(1)))
    await expect.poll(receipt, soon).toEqual({ to: from + 3, missing: [] })
    expect((await written()).toSorted()).toEqual(['four', 'one', 'three', 'two'])
  })
})
