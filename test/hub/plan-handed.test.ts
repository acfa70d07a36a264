import 'fake-indexeddb/auto'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { saysSame } from '@/core/record/says-same.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { handPlan, planHolder, takePlanBack } from '@/exchange/hand-plan.ts'
import { findServer } from '@/hub/find-server.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { tastingTrial } from '../journeys/tasting-trial.ts'
import {
  comesBack,
  type Device,
  goesOffline,
  joins,
  newDevice,
  opens,
  waitingAt,
  wholeOf,
} from './at-a-table.ts'
import { patience } from './patience.ts'
import { type RunningHub, runHub } from './running-hub.ts'

const whole = tastingTrial()
const { id: trialId } = whole.trial

const soon = { timeout: patience, interval: 30 }

let hub: RunningHub
let owner: Device
let laptop: Device
let other: Device
let login: string

const planAt = async (at: Device) => planInForce(await wholeOf(at.notebook, trialId))
const change = async (at: Device, said: Partial<Plan>) => {
  const base = await planAt(at)
  await at.notebook.keepPlan({ ...base, ...said }, base)
}
const handed = async (at: Device) => {
  const [joined] = await at.services.store.joined.toArray()
  return joined !== undefined && joined.notice?.planAt === joined.seat
}
const seatOf = async (at: Device) =>
  (await at.services.store.joined.toArray())[0]?.seat ?? 'no seat'
const plansOf = async (at: Device) =>
  (await wholeOf(at.notebook, trialId)).plans.toSorted((a, b) => a.revision - b.revision)
/** Whether all devices hold the owner's revisions, the same in force. What was refused stays beside them where it was written. */
const allTheSame = async () => {
  const [told, ...others] = await Promise.all([owner, laptop, other].map(plansOf))
  const inForce = (await planAt(owner)).id
  for (const each of [laptop, other]) if ((await planAt(each)).id !== inForce) return false
  return others.every((each) => told?.every((plan) => each.some((held) => saysSame(held, plan))))
}

describe.skipIf(!findServer())('the plan of a table, handed to another device', () => {
  beforeAll(async () => {
    hub = await runHub()
    owner = newDevice(hub.tickets[0])
    laptop = newDevice(hub.tickets[0])
    other = newDevice(hub.tickets[0])
    await owner.notebook.importTrial(writeTrialFile({ ...whole, sessions: [] }))
    await opens(owner, trialId, hub.tickets[0])
    login = await joins(owner, trialId, laptop, 'bench')
    await joins(owner, trialId, other, 'key')
  })
  afterAll(async () => {
    for (const each of [owner, laptop, other]) await goesOffline(each)
    for (const each of [owner, laptop, other]) expect(each.failures).toEqual([])
    await hub?.stop()
  })

  test('what a device changes that it was not handed to comes to nobody, and it is told so', async () => {
    for (const each of [laptop, other])
      await expect.poll(() => each.notebook.wholeTrial(trialId), soon).toBeDefined()
    const before = await plansOf(owner)
    await change(other, { question: 'Mine?' })
    const refused = async () => (await other.services.store.joined.toArray())[0]?.notice?.refused
    await expect.poll(refused, soon).toMatchObject([{ reason: 'not-of-this-part' }])
    expect(await plansOf(owner)).toEqual(before)
    await expect
      .poll(async () => (await planAt(other)).question, soon)
      .toBe(whole.plans[0]?.question)
  })

  test('it is changed there, offline too, and every device sees each change live, as one revision under one id', async () => {
    const before = (await plansOf(owner)).length
    await handPlan(owner.services, trialId, { login, seat: await seatOf(laptop) })
    await expect.poll(() => handed(laptop), soon).toBe(true)
    expect(await handed(other)).toBe(false)
    await change(laptop, { question: 'Is it the water?' })
    await expect.poll(async () => (await planAt(owner)).question, soon).toBe('Is it the water?')
    await expect.poll(async () => (await planAt(other)).question, soon).toBe('Is it the water?')
    await expect.poll(() => waitingAt(laptop), soon).toBe(0)
    await change(laptop, { flights: 2 })
    await expect.poll(async () => (await planAt(owner)).flights, soon).toBe(2)
    await goesOffline(laptop)
    for (const question of ['Is it', 'Is it the', 'Is it the salt?'])
      await change(laptop, { question })
    await comesBack(laptop)
    await expect.poll(async () => (await planAt(other)).question, soon).toBe('Is it the salt?')
    await expect.poll(allTheSame, soon).toBe(true)
    // Handed over it is one revision more, however often it was changed there.
    expect((await plansOf(owner)).length).toBe(before + 1)
  })

  test('what comes late after it was taken back is joined field by field; what the baker changed since stands and is told', async () => {
    await goesOffline(laptop)
    await change(laptop, { question: 'Late?', sparePieces: 3 })
    await takePlanBack(owner.services, trialId)
    const own = await owner.services.store.own.get(trialId)
    expect(own && planHolder(own)).toBeNull()
    await change(owner, { question: 'The baker’s?', placesPerLoad: 1 })
    await comesBack(laptop)
    await expect.poll(async () => (await planAt(owner)).sparePieces, soon).toBe(3)
    expect(await planAt(owner)).toMatchObject({ question: 'The baker’s?', placesPerLoad: 1 })
    await expect.poll(() => handed(laptop), soon).toBe(false)
    const refused = async () =>
      (await laptop.services.store.joined.toArray())[0]?.notice?.refused.map(({ reason }) => reason)
    await expect.poll(refused, soon).toEqual(['plan-moved'])
    await expect.poll(allTheSame, soon).toBe(true)
  })
})
