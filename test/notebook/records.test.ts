import 'fake-indexeddb/auto'
import { describe, expect, test } from 'vitest'
import type { NewEvent } from '@/core/session/press/new-event.ts'
import { createNotebook, presentSteps } from '@/notebook/create-notebook.ts'
import type { NewBallot } from '@/notebook/notebook.ts'
import { Store } from '@/notebook/store.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { begun } from '../trial-of/made-up-day.ts'
import { planOf } from '../trial-of/plan-of.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'
import {
  contentOf,
  freshName,
  notebookAtTheTable,
  notebookOf,
  notebookWithTrial,
  testNow,
  trialAtTheTable,
} from './notebook-of.ts'

const inSession = { trialId: 'trial-1', sessionId: 'session-1' } as const
const note: NewEvent = {
  ...inSession,
  kind: 'note',
  text: 'smells of apples',
  about: { kind: 'batch', id: 'batch-1' },
}
const ballot: NewBallot = {
  ...inSession,
  tasterId: 'taster-2',
  startedAt: testNow - 60_000,
  about: { kind: 'serving', id: 'serving-1' },
  answers: [{ responseId: 'liking', value: 8 }],
}
const jpeg = (byte: number) => new Blob([new Uint8Array([255, 216, byte])], { type: 'image/jpeg' })
const photo = {
  ...{ id: 'photo-2', trialId: 'trial-1', at: testNow, mediaType: 'image/jpeg' as const },
  ...{ widthPixels: 4, heightPixels: 3 },
}

describe('records on their way in', () => {
  test('N1: what does not fit its shape is refused, and the notebook stays as it was', async () => {
    const notebook = await notebookWithTrial()
    const before = await contentOf(notebook)
    const refused = { name: 'NotebookFailure', reason: 'refused-record' }
    const { kind: _, ...kindless } = note
    await expect(notebook.log(kindless as NewEvent)).rejects.toMatchObject(refused)
    await expect(notebook.log({ ...note, at: -1 })).rejects.toMatchObject({
      ...refused,
      troubles: [{ reason: 'shape', pointer: '/at', expected: 'a number at least 0', found: '-1' }],
    })
    const { about: __, ...aboutless } = ballot
    await expect(notebook.sealBallot(aboutless as NewBallot)).rejects.toMatchObject(refused)
    const nowhere = { ...planOf(), flights: 0 }
    await expect(notebook.keepPlan(nowhere)).rejects.toMatchObject(refused)
    const scale = { resolutionGrams: 0, capacityGrams: 9 }
    const thing = { id: 'scale-2', kind: 'scale', name: 'Fine', ...scale }
    await expect(notebook.keepKitchenThing(thing as never)).rejects.toMatchObject(refused)
    await expect(notebook.addPhoto({ ...photo, widthPixels: 0 }, jpeg(1))).rejects.toMatchObject(
      refused,
    )
    expect(await contentOf(notebook)).toEqual(before)
  })
  test('N2: what names something that is not there is refused, and the notebook stays as it was', async () => {
    const notebook = await notebookWithTrial()
    const before = await contentOf(notebook)
    const dangling = (names: string) => ({
      reason: 'refused-record',
      troubles: [expect.objectContaining({ reason: 'reference', names })],
    })
    await expect(notebook.log({ ...note, sessionId: 'session-9' })).rejects.toMatchObject(
      dangling('session-9'),
    )
    await expect(notebook.log({ ...note, corrects: 'event-999' })).rejects.toMatchObject(
      dangling('event-999'),
    )
    const stranger = { tasterId: 'taster-9', knows: false }
    await expect(
      notebook.createTrial({ ...planOf(), id: 'plan-2', trialId: 'trial-2', tasters: [stranger] }),
    ).rejects.toMatchObject({ reason: 'refused-record' })
    await expect(notebook.log({ ...note, trialId: 'trial-9' })).rejects.toMatchObject({
      reason: 'no-such-trial',
    })
    expect(await contentOf(notebook)).toEqual(before)
  })

  test('N3: every change raises the revision by one, a refused one does not', async () => {
    const notebook = await notebookAtTheTable()
    const revision = async () => (await notebook.wholeTrial('trial-1'))?.trial.revision
    expect(await revision()).toBe(40)
    await notebook.log(note)
    await notebook.logAll([note, note])
    await notebook.sealBallot(ballot)
    expect(await revision()).toBe(43)
    await expect(notebook.log({ ...note, sessionId: 'session-9' })).rejects.toThrow()
    expect(await revision()).toBe(43)
  })
})

describe('the home list', () => {
  test('N4: a line follows every change', async () => {
    const notebook = await notebookWithTrial()
    const [before] = await notebook.summaries()
    expect(before).toMatchObject({
      ...{ trialId: 'trial-1', revision: 40, question: 'Does more water open the crumb?' },
      ...{ sessionsDone: 1, plannedSessions: 2, lastAt: begun + 155 * 60_000, binned: false },
      levels: [
        { label: '66.4', value: 66.4 },
        { label: '73.2', value: 73.2 },
      ],
    })
    await notebook.log(note)
    expect((await notebook.summaries())[0]).toMatchObject({ revision: 41, lastAt: testNow })
  })

  test('N4: a line that is missing or out of date is made anew', async () => {
    const name = freshName()
    const notebook = await notebookWithTrial(name)
    const before = await notebook.summaries()
    const store = new Store(name, presentSteps)
    await store.summaries.update('trial-1', { revision: 3, question: 'stale' })
    expect(await notebook.summaries()).toEqual(before)
    await store.summaries.clear()
    expect(await notebook.summaries()).toEqual(before)
    notebook.close()
    const again = notebookOf(name)
    expect(await again.summaries()).toEqual(before)
    expect(await store.summaries.toArray()).toEqual(before)
  })

  test('N40: an answer stands beside its trial until the trial changes', async () => {
    const notebook = await notebookWithTrial()
    const answer = async () => (await notebook.summaries())[0]?.answer
    await notebook.keepAnswer('trial-1', 39, 'Found too early.')
    expect(await answer()).toBeUndefined()
    await notebook.keepAnswer('trial-1', 40, 'These pieces lean.')
    expect(await answer()).toBe('These pieces lean.')
    await notebook.keepAnswer('no-such-trial', 40, 'Of nothing.')
    await notebook.log(note)
    expect(await answer()).toBeUndefined()
    await notebook.keepAnswer('trial-1', 40, 'These pieces lean.')
    expect(await answer()).toBeUndefined()
  })

  test('N40: nothing is kept beside a sealed trial', async () => {
    const whole = wholeTrialOf()
    const events = whole.events.filter(({ kind }) => kind !== 'unsealed')
    const notebook = notebookOf()
    await notebook.importTrial(writeTrialFile({ ...whole, events }))
    expect((await notebook.summaries())[0]?.sealed).toBe(true)
    await notebook.keepAnswer('trial-1', 40, 'These pieces lean.')
    expect((await notebook.summaries())[0]?.answer).toBeUndefined()
  })

  test('N5: newest work first, archived and binned left out unless asked for', async () => {
    const notebook = await notebookWithTrial()
    const make = (trialId: string) => {
      const plan = { ...planOf(), id: `${trialId}-plan`, trialId, at: testNow }
      return notebook.createTrial(plan)
    }
    await make('trial-b')
    await make('trial-a')
    await notebook.archive('trial-a', true)
    await notebook.bin('trial-1', true)
    const listed = async (options?: { binned?: boolean; archived?: boolean }) =>
      (await notebook.summaries(options)).map((line) => line.trialId)
    expect(await listed()).toEqual(['trial-b'])
    expect(await listed({ archived: true })).toEqual(['trial-a', 'trial-b'])
    expect(await listed({ binned: true })).toEqual(['trial-b', 'trial-1'])
  })
})

describe('log and ballots', () => {
  test('N12: an id that is already here is refused, for events and ballots alike', async () => {
    const name = freshName()
    await notebookAtTheTable(name)
    const services = { now: () => testNow, zone: 'Europe/Rome', newSeed: () => 1 }
    const events = createNotebook(name, { ...services, newId: () => 'event-003' })
    await expect(events.log(note)).rejects.toMatchObject({ reason: 'refused-record' })
    const ballots = createNotebook(name, { ...services, newId: () => 'ballot-1' })
    await expect(ballots.sealBallot(ballot)).rejects.toMatchObject({ reason: 'refused-record' })
    const whole = await events.wholeTrial('trial-1')
    expect(whole).toEqual(trialAtTheTable())
  })

  test('N13: events of one press are kept in their order, all or none', async () => {
    const notebook = await notebookWithTrial()
    const two = await notebook.logAll([note, { ...note, text: 'second' }])
    expect(two.map((event) => event.kind === 'note' && event.text)).toEqual([note.text, 'second'])
    expect((two[1]?.count ?? 0) - (two[0]?.count ?? 0)).toBe(1)
    await expect(
      notebook.logAll([
        { ...note, text: 'third' },
        { ...note, at: -1 },
      ]),
    ).rejects.toMatchObject({ reason: 'refused-record' })
    expect((await notebook.wholeTrial('trial-1'))?.events).toHaveLength(32 + 2)
    expect(await notebook.logAll([])).toEqual([])
  })

  test('N14: the running number is unique and rises, over two notebooks on one database', async () => {
    const name = freshName()
    const one = await notebookAtTheTable(name)
    const other = notebookOf(name)
    const logged = await Promise.all(
      Array.from({ length: 12 }, (_, index) => (index % 2 ? one : other).log(note)),
    )
    const sealed = await one.sealBallot(ballot)
    const counts = [...logged, sealed].map((each) => each.count).sort((a, b) => a - b)
    expect(counts).toEqual(Array.from({ length: 13 }, (_, index) => index + 1))
    expect(new Set([...logged, sealed].map((each) => each.device)).size).toBe(1)
  })

  test('N14: erasing a trial and getting it back from its file do not give a number out again', async () => {
    const notebook = await notebookWithTrial()
    await notebook.logAll(Array.from({ length: 200 }, () => note))
    const last = await notebook.log(note)
    const { text } = await notebook.exportTrial('trial-1')
    await notebook.bin('trial-1', true)
    await notebook.erase('trial-1')
    await notebook.importTrial(text)
    expect((await notebook.log(note)).count).toBe(last.count + 1)
    await notebook.bin('trial-1', true)
    await notebook.erase('trial-1')
    await notebook.importTrial(text.replace(`"count": ${last.count},`, '"count": 500,'))
    expect((await notebook.log(note)).count).toBe(501)
  })

  test('N15: an event keeps the time it carries, else it gets the notebook’s', async () => {
    const notebook = await notebookWithTrial()
    expect(await notebook.log(note)).toMatchObject({ at: testNow, zone: 'Europe/Rome' })
    expect(await notebook.log({ ...note, at: testNow - 90_000 })).toMatchObject({
      at: testNow - 90_000,
    })
  })

  test('N17: a picture comes back byte for byte, apart from its record', async () => {
    const notebook = await notebookWithTrial()
    await notebook.addPhoto(photo, jpeg(7))
    const back = await notebook.picture('photo-2')
    expect(new Uint8Array((await back?.arrayBuffer()) ?? [])).toEqual(new Uint8Array([255, 216, 7]))
    expect(back?.type).toBe('image/jpeg')
    expect((await notebook.wholeTrial('trial-1'))?.photos).toContainEqual(photo)
    expect(await notebook.picture('photo-1')).toBeUndefined()
    const png = new Blob([], { type: 'image/png' })
    await expect(notebook.addPhoto({ ...photo, id: 'photo-3' }, png)).rejects.toMatchObject({
      reason: 'refused-record',
    })
    await expect(notebook.addPhoto(photo, jpeg(8))).rejects.toMatchObject({
      reason: 'refused-record',
    })
  })
})
