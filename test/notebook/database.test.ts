import 'fake-indexeddb/auto'
import { readFileSync } from 'node:fs'
import { Dexie } from 'dexie'
import { afterEach, describe, expect, test, vi } from 'vitest'
import * as z from 'zod/mini'
import { createNotebook, presentSteps } from '@/notebook/create-notebook.ts'
import { type LateChain, Store } from '@/notebook/store.ts'
import { dataVersion } from '@/trial-file/data-version.ts'
import { type Content, type Migration, provedChain } from '@/trial-file/migration.ts'
import { presentChain } from '@/trial-file/present-chain.ts'
import { planOf } from '../trial-of/plan-of.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'
import { contentOf, freshName, notebookOf, notebookWithTrial, testNow } from './notebook-of.ts'

const services = { now: () => testNow, zone: 'Europe/Rome', newId: () => 'made', newSeed: () => 1 }
const list = z.array(z.looseObject({}))

/** Made-up past: the present version, seen from one that is to come, called the trial's note remark, and a taster's initials sign. */
const step: Migration = {
  to: dataVersion + 1,
  oldFile: z.strictObject({
    ...{ format: z.literal('evenhand-trial'), version: z.literal(dataVersion), kitchen: list },
    trial: z.looseObject({ remark: z.string() }),
    ...{ plans: list, sessions: list, events: list, ballots: list, photos: list },
  }),
  content: (old) => {
    const { remark, ...trial } = old.trial as Content
    return { ...old, trial: { ...trial, note: remark } }
  },
  kitchenThing: (old) => {
    const { sign, ...thing } = old
    return sign === undefined ? old : { ...thing, initials: sign }
  },
  settings: (old) => old,
}
const chainOf = (migration: Migration): LateChain => ({
  version: migration.to,
  load: async () =>
    provedChain({
      version: migration.to,
      migrations: [...presentChain.migrations, migration],
    }),
})

/** A notebook of the made-up past under this name; what its tables hold is answered. */
async function oldNotebook(name: string) {
  const notebook = await notebookWithTrial(name)
  notebook.close()
  const store = new Store(name, presentSteps)
  const raw = (table: string) => store.table<Content, string>(table)
  const { note, ...trial } = wholeTrialOf().trial
  await raw('trials').put({ ...trial, remark: note })
  await raw('kitchen').put({ id: 'taster-1', kind: 'taster', sign: 'RV' })
  store.close()
}

/** All rows of a database as they lie, and its version, read without the notebook. */
async function rowsOf(name: string) {
  const raw = new Dexie(name)
  await raw.open()
  const tables = await Promise.all(
    raw.tables.map(async (table) => [table.name, await table.toArray()] as const),
  )
  const { verno } = raw
  raw.close()
  return { verno, tables: Object.fromEntries(tables) }
}

afterEach(() => {
  vi.restoreAllMocks()
})

describe('the database', () => {
  test('N34: what was kept is there after closing and opening again', async () => {
    const name = freshName()
    const notebook = await notebookWithTrial(name)
    const before = await contentOf(notebook)
    notebook.close()
    await expect(notebook.summaries()).rejects.toMatchObject({ reason: 'closed' })
    expect(await contentOf(notebookOf(name))).toEqual(before)
  })

  test('N35: a notebook of a newer version is refused and left untouched', async () => {
    const name = freshName()
    const newer = new Dexie(name)
    newer.version(dataVersion + 1).stores({ trials: 'id', baskets: 'id' })
    await newer.table('baskets').add({ id: 'one' })
    newer.close()
    const before = await rowsOf(name)
    expect(before.verno).toBe(dataVersion + 1)
    const notebook = notebookOf(name)
    await expect(notebook.summaries()).rejects.toMatchObject({
      ...{ name: 'NotebookFailure', reason: 'newer-database' },
    })
    await expect(notebook.kitchen()).rejects.toMatchObject({ reason: 'newer-database' })
    expect(await rowsOf(name)).toEqual(before)
  })

  test('N36: an older notebook is brought up by the same step as a file', async () => {
    const name = freshName()
    await oldNotebook(name)
    const notebook = createNotebook(name, services, chainOf(step))
    expect(await notebook.wholeTrial('trial-1')).toEqual(wholeTrialOf())
    expect(await notebook.summaries()).toHaveLength(1)
    notebook.close()
    expect((await rowsOf(name)).verno).toBe(dataVersion + 1)
  })

  test('N36: a notebook that version 2 kept is brought up, with the tables that came since', async () => {
    const name = freshName()
    const old = JSON.parse(
      readFileSync(
        new URL('../trial-file/files-of-version-2/pan-loaf-salt.json', import.meta.url),
        'utf8',
      ),
    )
    const before = new Dexie(name)
    const byTrial = Object.fromEntries(
      ['plans', 'sessions', 'events', 'ballots', 'photos', 'pictures'].map((table) => [
        table,
        'id, trialId',
      ]),
    )
    before.version(2).stores({
      ...byTrial,
      ...{ trials: 'id', kitchen: 'id', drafts: 'key', settings: 'key', summaries: 'trialId' },
    })
    await before.table('trials').put(old.trial)
    for (const table of ['plans', 'sessions', 'events', 'ballots', 'photos', 'kitchen'])
      await before.table(table).bulkPut(old[table])
    before.close()
    const notebook = notebookOf(name)
    const whole = await notebook.wholeTrial(old.trial.id)
    expect(whole?.events).toEqual(old.events)
    expect(whole?.plans[0]?.steps[0]?.lateSeconds).toBe(old.plans[0].steps[0].toleranceSeconds)
    expect(await notebook.summaries()).toHaveLength(1)
    expect(await notebook.houses()).toEqual([])
    notebook.close()
    expect((await rowsOf(name)).verno).toBe(dataVersion)
  })

  test.each([
    [
      'a step that throws',
      { ...step, content: () => Dexie.Promise.reject(new Error('no')) as never },
    ],
    [
      'a row that does not fit its time',
      { ...step, oldFile: z.strictObject({ wine: z.string() }) },
    ],
  ])('N36: %s leaves the older notebook as it was', async (_, failing) => {
    const name = freshName()
    await oldNotebook(name)
    const before = await rowsOf(name)
    const notebook = createNotebook(name, services, chainOf(failing))
    await expect(notebook.summaries()).rejects.toThrow()
    notebook.close()
    expect(await rowsOf(name)).toEqual(before)
  })

  test('N37: a notebook lets go when a newer version opens it, and says so', async () => {
    const name = freshName()
    const notebook = await notebookWithTrial(name)
    const newer = new Dexie(name)
    newer.version(9).stores({ trials: 'id' })
    await newer.open()
    await expect(notebook.wholeTrial('trial-1')).rejects.toMatchObject({
      reason: 'closed-by-newer',
    })
    newer.close()
  })

  test('N37: a notebook that another tab keeps from opening says that it is blocked', async () => {
    const name = freshName()
    await oldNotebook(name)
    const stubborn = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open(name)
      request.onsuccess = () => resolve(request.result)
      request.onerror = () => reject(request.error)
    })
    const notebook = createNotebook(name, services, chainOf(step))
    await expect(notebook.summaries()).rejects.toMatchObject({ reason: 'blocked' })
    stubborn.close()
  })

  test.each([['put'], ['add']] as const)(
    'N38: when the device is full at %s, nothing of the change is stored',
    async (method) => {
      const notebook = await notebookWithTrial()
      const before = await contentOf(notebook)
      const store = Object.getPrototypeOf(await someStore())
      vi.spyOn(store, method).mockImplementation(() => {
        throw new DOMException('full', 'QuotaExceededError')
      })
      await expect(
        notebook.log({
          ...{ trialId: 'trial-1', sessionId: 'session-1', kind: 'note', text: 'long' },
          about: { kind: 'batch', id: 'batch-1' },
        }),
      ).rejects.toMatchObject({ name: 'NotebookFailure', reason: 'out-of-room' })
      vi.restoreAllMocks()
      expect(await contentOf(notebook)).toEqual(before)
    },
  )

  test('N39: a stored record that does not fit its shape is told as damaged', async () => {
    const name = freshName()
    const notebook = await notebookWithTrial(name)
    const store = new Store(name, presentSteps)
    await store.table('events').update('event-003', { kind: 'sneeze' })
    await expect(notebook.wholeTrial('trial-1')).rejects.toMatchObject({
      ...{ reason: 'damaged', troubles: [{ reason: 'shape', pointer: '/events/2/kind' }] },
    })
    store.close()
  })

  test('N39: a damaged trial without a line keeps neither the notebook nor the backup from opening', async () => {
    const name = freshName()
    const first = await notebookWithTrial(name)
    await first.createTrial({ ...planOf(), id: 'plan-2', trialId: 'trial-2' })
    const store = new Store(name, presentSteps)
    await store.table('plans').update('plan-1', { flights: 'many' })
    await store.summaries.delete('trial-1')
    store.close()
    first.close()
    const notebook = notebookOf(name)
    const lines = await notebook.summaries()
    expect(lines.map(({ trialId }) => trialId)).toEqual(['trial-2'])
    expect(await notebook.wholeTrial('trial-2')).toBeDefined()
    await expect(notebook.wholeTrial('trial-1')).rejects.toMatchObject({ reason: 'damaged' })
    expect(await notebook.backUp()).toMatchObject({ trials: 1, damaged: ['trial-1'] })
  })
})

/** Any object store of the database in use, to reach the methods all of them share. */
async function someStore(): Promise<IDBObjectStore> {
  const name = freshName()
  const store = new Store(name, presentSteps)
  await store.open()
  const found = store.backendDB().transaction('trials').objectStore('trials')
  return found
}
