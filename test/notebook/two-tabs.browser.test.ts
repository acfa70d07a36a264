import { Dexie, liveQuery } from 'dexie'
import { afterEach, expect, test, vi } from 'vitest'
import type { NewEvent } from '@/core/session/press/new-event.ts'
import { createNotebook } from '@/notebook/create-notebook.ts'
import type { OpenNotebook } from '@/notebook/notebook.ts'
import { jsonPlace } from '@/trial-file/json-place.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'

const now = () => Date.UTC(2026, 4, 9, 12)
const newId = () => crypto.randomUUID()
const name = 'two-tabs'
const open: OpenNotebook[] = []
const opened = () => {
  const notebook = createNotebook(name, { now, zone: 'Europe/Rome', newId, newSeed: () => 7 })
  open.push(notebook)
  return notebook
}
const text = writeTrialFile(wholeTrialOf())
const note: NewEvent = {
  ...{ trialId: 'trial-1', sessionId: 'session-1', kind: 'note', text: 'smells of apples' },
  about: { kind: 'batch', id: 'batch-1' },
}

afterEach(async () => {
  for (const notebook of open.splice(0)) notebook.close()
  await Dexie.delete(name)
})

test('N24: in a real browser a trial goes in and comes out byte for byte', async () => {
  const notebook = opened()
  expect(await notebook.importTrial(text)).toMatchObject({ ok: true, already: false })
  expect(await notebook.wholeTrial('trial-1')).toEqual(wholeTrialOf())
  expect((await notebook.exportTrial('trial-1')).text).toBe(text)
})

test('N34: everything is there after closing and opening again, pictures and drafts too', async () => {
  const first = opened()
  await first.importTrial(text)
  const photo = { id: 'photo-2', trialId: 'trial-1', at: now(), mediaType: 'image/png' as const }
  const picture = new Blob([new Uint8Array([137, 80, 0, 255])], { type: 'image/png' })
  await first.addPhoto({ ...photo, widthPixels: 2, heightPixels: 2 }, picture)
  await first.keepDraft('plan/trial-1', { question: 'Wh' })
  const logged = await first.log(note)
  const backup = (await first.backUp())?.zip ?? new Blob()
  first.close()
  const second = opened()
  expect((await second.wholeTrial('trial-1'))?.events).toContainEqual(logged)
  expect(await second.draft('plan/trial-1')).toEqual({ question: 'Wh' })
  const bytes = await (await second.picture('photo-2'))?.arrayBuffer()
  expect([...new Uint8Array(bytes ?? [])]).toEqual([137, 80, 0, 255])
  await second.bin('trial-1', true)
  await second.erase('trial-1')
  expect(await second.restore(backup)).toMatchObject({
    ...{ ok: true, record: { cameIn: 1, left: [] } },
  })
  expect((await second.wholeTrial('trial-1'))?.events).toContainEqual(logged)
})

test('N48: every writing transaction asks to be on the disk before it is told as done', async () => {
  const notebook = opened()
  await notebook.importTrial(text)
  const asked: string[] = []
  const real = IDBObjectStore.prototype.put
  const spy = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function watched(
    this: IDBObjectStore,
    ...given
  ) {
    asked.push(this.transaction.durability)
    return real.apply(this, given)
  })
  await notebook.log(note)
  await notebook.keepDraft('plan/trial-1', { question: 'Wh' })
  spy.mockRestore()
  expect(asked.length).toBeGreaterThanOrEqual(2)
  expect(new Set(asked)).toEqual(new Set(['strict']))
})

test('N14: two connections writing at once give every number once, rising', async () => {
  const [one, other] = [opened(), opened()]
  await one.importTrial(text)
  const logged = await Promise.all(
    Array.from({ length: 20 }, (_, index) => (index % 2 ? one : other).log(note)),
  )
  const counts = logged.map((event) => event.count).sort((a, b) => a - b)
  expect(counts).toEqual(Array.from({ length: 20 }, (_, index) => index + 1))
  expect((await other.wholeTrial('trial-1'))?.trial.revision).toBe(40 + 20)
})

test('N4: a live query over the home list sees what another connection logged', async () => {
  const [one, other] = [opened(), opened()]
  await one.importTrial(text)
  const revisions: (number | undefined)[] = []
  const seen = new Promise<void>((resolve, reject) => {
    const subscription = liveQuery(() => one.summaries()).subscribe({
      next: ([line]) => {
        revisions.push(line?.revision)
        if (line?.revision !== 41) return
        subscription.unsubscribe()
        resolve()
      },
      error: reject,
    })
  })
  await expect.poll(() => revisions[0]).toBe(40)
  await other.log(note)
  await seen
  expect(revisions.at(-1)).toBe(41)
})

test('N37: a notebook lets go when a newer version opens it, and then N35: refuses it', async () => {
  const notebook = opened()
  await notebook.importTrial(text)
  const newer = new Dexie(name)
  newer.version(9).stores({ trials: 'id' })
  await newer.open()
  await expect(notebook.summaries()).rejects.toMatchObject({ reason: 'closed-by-newer' })
  newer.close()
  await expect(opened().summaries()).rejects.toMatchObject({ reason: 'newer-database' })
})

test('F2: the place where a text stops being JSON is the same as in any other engine', () => {
  expect(jsonPlace('{\n  "a": 1\n  "b": 2\n}')).toEqual({
    ...{ line: 3, column: 3 },
    detail: 'a comma or a closing bracket was expected, “"” stands there',
  })
  expect(() => JSON.parse('{\n  "a": 1\n  "b": 2\n}')).toThrow(SyntaxError)
})
