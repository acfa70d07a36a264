import 'fake-indexeddb/auto'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { levelsUnknown } from '@/core/seal/sealed.ts'
import { doublePresses } from '@/core/session/double-presses.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { linkOf, revoke } from '@/exchange/open-table.ts'
import { wrappedBy } from '@/exchange/wrapped.ts'
import { findServer } from '@/hub/find-server.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { tastingTrial, tellingOf } from '../journeys/tasting-trial.ts'
import {
  allThatCameTo,
  comesBack,
  type Device,
  goesOffline,
  joins,
  joinsBy,
  newDevice,
  opens,
  slipAt,
  tastes,
  waitingAt,
  wholeOf,
} from './at-a-table.ts'
import { patience } from './patience.ts'
import { type RunningHub, runHub } from './running-hub.ts'

const found = findServer()
if (!found)
  console.log('The tests of the exchange are passed over: no message server (nats-server) here.')

const whole = tastingTrial()
const { id: trialId } = whole.trial
const [session] = whole.sessions
const [plan] = whole.plans
if (!session || !plan) throw new Error('a session and a plan')
const sessionId = session.id
const [dough] = session.batches
const mix = plan.steps.find(({ kind }) => kind === 'mix')
if (!dough || !mix) throw new Error('a dough and its mix')
const about = { kind: 'batch' as const, id: dough.id }
const note = (text: string) => ({ trialId, sessionId, kind: 'note' as const, text, about })
const begins = {
  ...{ trialId, sessionId, kind: 'step-started' as const, about },
  ...{ stepId: mix.id, repeat: 1 },
}

const soon = { timeout: patience, interval: 30 }

let hub: RunningHub
let owner: Device
let devices: Device[] = []

const device = (given = {}) => {
  const made = newDevice(hub.tickets[0], given)
  devices.push(made)
  return made
}
const notesAt = async (at: Device) =>
  ((await at.notebook.wholeTrial(trialId))?.events ?? []).flatMap((event) =>
    event.kind === 'note' ? [event.text] : [],
  )
const holds = (at: Device) => expect.poll(() => at.notebook.wholeTrial(trialId), soon).toBeDefined()

describe.skipIf(!found)('notebooks at one table', () => {
  beforeAll(async () => {
    hub = await runHub()
    owner = device()
    await owner.notebook.importTrial(writeTrialFile(whole))
    await opens(owner, trialId, hub.tickets[0])
  })
  afterAll(async () => {
    for (const each of devices) await goesOffline(each)
    for (const each of devices) expect(each.failures).toEqual([])
    devices = []
    await hub?.stop()
  })

  test('what is written at the bench comes to the baker in its order, offline, over a killed hub and a reload, and leaves the outbox', async () => {
    const bench = device()
    await joins(owner, trialId, bench, 'bench')
    await holds(bench)
    await bench.notebook.log(note('one'))
    await expect.poll(() => notesAt(owner), soon).toEqual(['one'])
    await goesOffline(bench)
    for (const text of ['two', 'three', 'four']) await bench.notebook.log(note(text))
    await owner.notebook.log(note('meanwhile'))
    await hub.restart()
    await comesBack(bench)
    // What waits is put out as the device comes back: until then nothing waits, so the baker's notes are asked first.
    const fromBench = async () =>
      (await wholeOf(owner.notebook, trialId)).events
        .toSorted((a, b) => a.count - b.count)
        .flatMap((event) => (event.kind === 'note' ? [event.text] : []))
        .filter((text) => text !== 'meanwhile')
    await expect.poll(fromBench, soon).toEqual(['one', 'two', 'three', 'four'])
    await expect.poll(() => waitingAt(bench), soon).toBe(0)
    await expect
      .poll(async () => (await notesAt(bench)).toSorted(), soon)
      .toEqual(['four', 'meanwhile', 'one', 'three', 'two'])
    const [there, here] = [
      await wholeOf(owner.notebook, trialId),
      await wholeOf(bench.notebook, trialId),
    ]
    expect(here.events).toEqual(there.events)
    await goesOffline(bench)
  })

  test('two devices that begin the same mix both stand and are told; a clock that stands otherwise is told with its entries', async () => {
    const bench = device({ clockLater: -90_000 })
    await joins(owner, trialId, bench, 'bench')
    await holds(bench)
    await goesOffline(bench)
    await bench.notebook.log(begins)
    await owner.notebook.log(begins)
    await comesBack(bench)
    const eventsNow = async () => (await wholeOf(owner.notebook, trialId)).events
    await expect.poll(async () => doublePresses(await eventsNow()).length, soon).toBe(1)
    const [press] = doublePresses(await eventsNow())
    const late = [press?.first, press?.second].find((event) => event?.clockLater !== undefined)
    // Sealed 90 s behind this machine's clock; the way takes milliseconds, so it is 90 s to the tenth.
    expect((late?.clockLater ?? 0) / 1000).toBeCloseTo(90, 1)
    expect(Math.abs(Date.now() - (late?.at ?? 0))).toBeLessThan(20_000)
    await expect.poll(() => waitingAt(bench), soon).toBe(0)
    const heard = await owner.services.store.heard.toArray()
    expect(heard.filter(({ ownerLater = 0 }) => Math.abs(ownerLater - 90_000) < 100)).toHaveLength(
      1,
    )
    await goesOffline(bench)
  })

  test('each part holds what it may: the bench no code, the oven letters alone, the key all but ballots', async () => {
    const [bench, oven, key] = [device(), device(), device()]
    await joins(owner, trialId, bench, 'bench')
    await joins(owner, trialId, oven, 'oven')
    await joins(owner, trialId, key, 'key')
    await Promise.all([holds(bench), holds(oven), holds(key)])
    const codes = session.dealt.servings.map(({ code }) => code)
    const textOf = async (at: Device) => JSON.stringify(await wholeOf(at.notebook, trialId))
    const [benchText, ovenText, keyText] = await Promise.all([bench, oven, key].map(textOf))
    for (const code of codes) {
      expect(keyText).toContain(`"code":"${code}"`)
      expect(benchText).not.toContain(`"code":"${code}"`)
      expect(ovenText).not.toContain(`"code":"${code}"`)
    }
    const [held] = (await wholeOf(oven.notebook, trialId)).sessions
    const letters = held?.dealt.letters.map(({ letter, levelId }) => [letter, levelId])
    expect(letters).toEqual(
      letters?.map(([letter], at) => [letter, plan.levels[at]?.id]).toSorted(),
    )
    expect(levelsUnknown(held, [])).toBe(true)
    const [known] = (await wholeOf(bench.notebook, trialId)).sessions
    expect(known?.batches).toEqual(session.batches)
    expect((await wholeOf(bench.notebook, trialId)).trial.seed).toBe(0)
    for (const each of [bench, oven, key]) await goesOffline(each)
  })

  test('a taster is sent a slip and nothing that tells, and their ballots come in; the second phone of one code is told apart', async () => {
    const [taster, twin] = [device(), device()]
    const tasterId = 'club-1'
    const login = await joins(owner, trialId, taster, 'taster', { tasterId })
    await expect.poll(() => slipAt(taster), soon).not.toBeNull()
    await tastes(taster, 2)
    const ballots = async () =>
      (await wholeOf(owner.notebook, trialId)).ballots.filter((each) => each.tasterId === tasterId)
    await expect.poll(async () => (await ballots()).length, soon).toBe(2)
    await expect.poll(() => waitingAt(taster), soon).toBe(0)
    const own = await owner.services.store.own.get(trialId)
    const invited = own?.invited.find((each) => each.login.name === login)
    if (!own || !invited) throw new Error('no login')
    await joinsBy(twin, linkOf(own, invited))
    await expect.poll(() => slipAt(twin), soon).not.toBeNull()
    await tastes(twin, 3)
    // What stood stays, the third serving is new; that there are two phones is known by their seats.
    await expect.poll(async () => (await ballots()).length, soon).toBe(3)
    await expect.poll(() => waitingAt(twin), soon).toBe(0)
    const seats = await owner.services.store.heard.filter((each) => each.login === login).toArray()
    expect(seats).toHaveLength(2)
    expect(seats.flatMap(({ refused }) => refused).length).toBeLessThanOrEqual(1)
    const { opened, text } = await allThatCameTo(taster)
    expect(opened).toBeGreaterThanOrEqual(3)
    // Their own codes were read by this, so that what it looks through is not empty.
    expect(text).toContain(`"${(await slipAt(taster))?.codes[0]}"`)
    for (const telling of tellingOf(whole)) expect(text).not.toContain(telling)
    for (const other of ['club-2', '"BO"', '"letter"', 'ballots', tasterId])
      expect(text).not.toContain(other)
    await revoke(owner.services, trialId, login)
    const { foreign = 0 } = (await owner.services.store.counts.get(trialId)) ?? {}
    await tastes(taster, 4)
    await expect
      .poll(async () => (await owner.services.store.counts.get(trialId))?.foreign, soon)
      .toBeGreaterThan(foreign)
    expect(await ballots()).toHaveLength(3)
  })

  test('a changed plan comes to helpers as it is kept, who watches hears how many are in, and a way without a seal is said to be one', async () => {
    const [bench, watch, taster] = [device(), device(), device()]
    await joins(owner, trialId, bench, 'bench')
    await joins(owner, trialId, watch, 'watch')
    await joins(owner, trialId, taster, 'taster', { tasterId: 'club-2', sealed: false })
    await holds(bench)
    const question = 'Is the wetter one better?'
    await owner.notebook.keepPlan({
      ...planInForce(await wholeOf(owner.notebook, trialId)),
      question,
    })
    await expect
      .poll(async () => planInForce(await wholeOf(bench.notebook, trialId)).question, soon)
      .toBe(question)
    await expect.poll(() => slipAt(taster), soon).not.toBeNull()
    await tastes(taster, 1)
    const watched = async () => (await watch.services.store.joined.toArray())[0]?.notice?.watched
    await expect.poll(async () => (await watched())?.ballots.in, soon).toBe(4)
    expect(await watch.notebook.wholeTrial(trialId)).toBeUndefined()
    const heard = taster.frames.join('')
    expect(heard).toContain('"slip":"')
    for (const text of tellingOf(whole)) expect(heard).not.toContain(text)
    // What is in clear is taken from nobody whose way is sealed, nor the other way round.
    const outside = { table: 'TABLE234', subject: 'b.EL7K2MQ9', count: 1 }
    const [sealed, clear] = [await wrappedBy(new Uint8Array(16)), await wrappedBy(null)]
    const [one, other] = [
      await sealed.fromDevice.close(outside, '{}'),
      await clear.fromDevice.close(outside, '{}'),
    ]
    expect((await sealed.fromDevice.open(outside, other)).ok).toBe(false)
    expect((await clear.fromDevice.open(outside, one)).ok).toBe(false)
  })
})
