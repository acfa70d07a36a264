import 'fake-indexeddb/auto'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { trialFindings } from '@/core/findings/trial-findings.ts'
import type { NewEvent } from '@/core/session/press/new-event.ts'
import { tasterQuestions } from '@/core/tasting/taster-questions.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { linkOf } from '@/exchange/open-table.ts'
import { findServer } from '@/hub/find-server.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { tastingTrial, tellingOf } from '../journeys/tasting-trial.ts'
import type { Came } from './all-that-came.ts'
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
if (!found) console.log('The day at a table is passed over: no message server (nats-server) here.')

const tasterIds = ['club-1', 'club-2', 'club-3']
const whole = tastingTrial({
  tasters: tasterIds.map((tasterId) => ({ tasterId, knows: false })),
})
const { id: trialId } = whole.trial
const [session] = whole.sessions
const [plan] = whole.plans
if (!session || !plan) throw new Error('a session and a plan')
const sessionId = session.id
const stepOf = (kind: string) => plan.steps.find((step) => step.kind === kind)?.id ?? ''
const questions = tasterQuestions(plan)

const soon = { timeout: patience, interval: 40 }
const minute = 60_000
const begins = Date.now() - 400 * minute

/** What the day's entries have in common; the same moments whoever writes them. */
let at = begins
const entry = (said: object) => {
  at += minute
  return { trialId, sessionId, at, ...said } as unknown as NewEvent
}
const ofDough = (id: string) => ({ about: { kind: 'batch', id } })
const mixes = session.dealt.doughOrder.map((id) => [
  entry({ kind: 'step-started', ...ofDough(id), stepId: stepOf('mix'), repeat: 1 }),
  entry({ kind: 'temperature', ...ofDough(id), of: 'dough', celsius: 23.5 }),
  entry({ kind: 'step-stopped', ...ofDough(id), stepId: stepOf('mix'), repeat: 1 }),
])
const ofPiece = (id: string) => ({ about: { kind: 'piece', id } })
const bakes = session.dealt.loads.flatMap(({ pieceIds }) =>
  pieceIds.map((id) => [
    entry({ kind: 'bake-in', ...ofPiece(id), stepId: stepOf('bake'), repeat: 1 }),
    entry({ kind: 'bake-out', ...ofPiece(id), stepId: stepOf('bake'), repeat: 1 }),
  ]),
)
const served = session.dealt.servings
  .filter(({ flightId }) => flightId !== null)
  .map(({ id }) => entry({ kind: 'served', about: { kind: 'serving', id } }))
/** How much a taster likes a code: something that differs by both. */
const likes = (tasterId: string) => (code: string, place: number) =>
  place === 0 ? ((Number(code) + tasterIds.indexOf(tasterId)) % 9) + 1 : 3
const unseals = {
  ...{
    trialId,
    sessionId,
    kind: 'unsealed' as const,
    about: { kind: 'session' as const, id: sessionId },
  },
}

/** The same day on one device. */
async function dayAlone(device: Device): Promise<WholeTrial> {
  const { notebook } = device
  await notebook.importTrial(writeTrialFile(whole))
  for (const event of [...mixes.flat(), ...bakes.flat(), ...served]) await notebook.log(event)
  for (const { tasterId, servingIds } of session?.dealt.tasterOrders ?? [])
    for (const id of servingIds) {
      const code = session?.dealt.servings.find((serving) => serving.id === id)?.code ?? ''
      await notebook.sealBallot({
        ...{ trialId, sessionId, tasterId, about: { kind: 'serving', id }, startedAt: at },
        answers: questions.map((question, place) => ({
          ...{ responseId: question.id, value: likes(tasterId)(code, place) },
        })),
      })
    }
  await notebook.log(unseals)
  return await wholeOf(notebook, trialId)
}

const saidInNotice = new Set(['at', 'closed', 'copy', 'receipts', 'refused', 'slip', 'watched'])

/** A notice to the device itself, opened by its keys; or the hub's acknowledgement of what it sent, which names a stream and a number. */
const isOwnWord = ({ subject, opened, body }: Came) =>
  opened === null ? subject.startsWith('_INBOX.') && isAcknowledgement(body) : true

function isAcknowledgement(body: string): boolean {
  // Of a notice that is not there yet the hub says so in the head, with no body.
  if (body === '') return true
  const says = JSON.parse(body)
  return Object.keys(says).every((key) => ['stream', 'seq', 'duplicate', 'domain'].includes(key))
}

/** No level, weight, letter, id, key, score or other taster. */
function expectNothingOfOthers(text: string, tasterId: string): void {
  for (const telling of tellingOf(whole)) expect(text).not.toContain(telling)
  const others = tasterIds.filter((other) => other !== tasterId)
  const initials = ['"AN"', '"BO"', '"CY"'].filter((_, at) => tasterIds[at] !== tasterId)
  for (const other of [...others, ...initials, '"letter"', 'levelId', 'ballots', 'answers'])
    expect(text).not.toContain(other)
}

const findingsOf = (of: WholeTrial) => {
  const answer = trialFindings(of, { unsealed: false, resamples: 200 })
  if (!answer.ok) throw new Error('still sealed')
  return JSON.stringify(answer.document)
}

describe.skipIf(!found)('a whole day at one table', () => {
  let hub: RunningHub
  const devices: Device[] = []
  beforeAll(async () => {
    hub = await runHub()
  })
  afterAll(async () => {
    for (const each of devices) await goesOffline(each)
    await hub?.stop()
  })

  test('bench, oven, key and three tasters, the hub killed twice, each device offline once, one code used twice: the records of one device with the same script, and its findings byte for byte', async () => {
    const made = () => {
      const device = newDevice(hub.tickets[0])
      devices.push(device)
      return device
    }
    const [owner, bench, oven, key, twin] = [made(), made(), made(), made(), made()]
    const tasters = tasterIds.map((tasterId) => ({ tasterId, device: made() }))
    await owner.notebook.importTrial(writeTrialFile(whole))
    await opens(owner, trialId, hub.tickets[0])
    await joins(owner, trialId, bench, 'bench')
    await joins(owner, trialId, oven, 'oven')
    await joins(owner, trialId, key, 'key')
    const logins: string[] = []
    for (const { tasterId, device } of tasters)
      logins.push(await joins(owner, trialId, device, 'taster', { tasterId }))
    for (const helper of [bench, oven, key])
      await expect.poll(() => helper.notebook.wholeTrial(trialId), soon).toBeDefined()

    const log = async (device: Device, events: readonly NewEvent[]) => {
      for (const event of events) await device.notebook.log(event)
    }
    await log(bench, mixes.slice(0, 2).flat())
    await goesOffline(bench)
    await hub.restart()
    await log(bench, mixes.slice(2).flat())
    await comesBack(bench)
    await log(oven, bakes.slice(0, 1).flat())
    await goesOffline(oven)
    await goesOffline(owner)
    await log(oven, bakes.slice(1).flat())
    await comesBack(oven)
    await opens(owner, trialId, hub.tickets[0], true)
    await goesOffline(key)
    await log(key, served)
    await comesBack(key)

    for (const { tasterId, device } of tasters) {
      await expect.poll(() => slipAt(device), soon).not.toBeNull()
      await tastes(device, 2, likes(tasterId))
      await goesOffline(device)
      await tastes(device, 4, likes(tasterId))
    }
    await hub.restart()
    const own = await owner.services.store.own.get(trialId)
    const first = own?.invited.find(({ login }) => login.name === logins[0])
    if (!own || !first) throw new Error('no login')
    await joinsBy(twin, linkOf(own, first))
    for (const { device } of tasters) await comesBack(device)
    for (const each of [bench, oven, key, ...tasters.map(({ device }) => device)])
      await expect.poll(() => waitingAt(each), soon).toBe(0)
    const beforeUnsealing = new Map<Device, number>()
    for (const { tasterId, device } of tasters) {
      const { came, text } = await allThatCameTo(device)
      beforeUnsealing.set(device, came.length)
      // Their own codes were read by this, so that what it looks through is not empty.
      expect(text).toContain(`"${(await slipAt(device))?.codes[0]}"`)
      expectNothingOfOthers(text, tasterId)
      expect(came.filter((each) => !isOwnWord(each))).toEqual([])
    }
    await owner.notebook.log(unseals)
    for (const { tasterId, device } of tasters) {
      await expect.poll(() => slipAt(device), soon).toBeNull()
      const { came } = await allThatCameTo(device)
      const since = came.slice(beforeUnsealing.get(device))
      // The unsealing brings that there is nothing to taste any more, and how far their own entries are in; no level, no result.
      const notices = since.flatMap(({ opened }) => opened ?? [])
      expect(notices.length).toBeGreaterThanOrEqual(1)
      for (const notice of notices) {
        const says = JSON.parse(notice.replace(/null$/, ''))
        expect(new Set(Object.keys(says))).toEqual(saidInNotice)
        expect(says).toMatchObject({ refused: [], copy: null, slip: null, watched: null })
      }
      expectNothingOfOthers(JSON.stringify(since), tasterId)
      expect(since.filter((each) => !isOwnWord(each))).toEqual([])
    }

    const there = await wholeOf(owner.notebook, trialId)
    const alone = await dayAlone(made())
    const recordsOf = ({ events, ballots, sessions, plans }: WholeTrial) =>
      JSON.stringify({ events, ballots, sessions, plans })
    for (const helper of [bench, oven, key])
      await expect
        .poll(
          async () => recordsOf(await wholeOf(helper.notebook, trialId)) === recordsOf(there),
          soon,
        )
        .toBe(true)
    const saidOf = ({ events }: WholeTrial) =>
      events
        .filter(({ kind }) => !['lock', 'unsealed', 'allergens-heard'].includes(kind))
        .map(({ id: _, device: _1, count: _2, zone: _3, ...said }) => JSON.stringify(said))
        .toSorted((a, b) => (a < b ? -1 : 1))
    expect(saidOf(there)).toEqual(saidOf(alone))
    expect(findingsOf(there)).toBe(findingsOf(alone))
    expect(findingsOf(await wholeOf(key.notebook, trialId))).toBe(findingsOf(alone))
    expect(devices.flatMap(({ failures }) => failures)).toEqual([])
  }, 120_000)
})
