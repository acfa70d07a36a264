import 'fake-indexeddb/auto'
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate'
import { describe, expect, test } from 'vitest'
import { backupDue } from '@/notebook/backup-state.ts'
import { presentSteps } from '@/notebook/create-notebook.ts'
import type { OpenNotebook } from '@/notebook/notebook.ts'
import { Store } from '@/notebook/store.ts'
import { planOf } from '../trial-of/plan-of.ts'
import { contentOf, freshName, notebookOf, notebookWithTrial, testNow } from './notebook-of.ts'

/** A notebook with the whole trial of the tests and so many more that only plan. */
async function notebookOfMany(more: number, name = freshName()): Promise<OpenNotebook> {
  const notebook = await notebookWithTrial(name)
  for (let index = 0; index < more; index++)
    await notebook.createTrial({ ...planOf(), id: `plan-${name}-${index}`, trialId: `t-${index}` })
  return notebook
}

async function zipOf(notebook: OpenNotebook): Promise<Blob> {
  const made = await notebook.backUp()
  if (!made) throw new Error('nobody stopped it')
  return made.zip
}

describe('long work', () => {
  test('N41: a backup tells how far it is, and stopped it gives no file', async () => {
    const notebook = await notebookOfMany(3)
    const heard: string[] = []
    const whole = await notebook.backUp({
      onProgress: (done, total) => heard.push(`${done}/${total}`),
    })
    expect(heard).toEqual(['0/4', '1/4', '2/4', '3/4', '4/4'])
    expect(whole).toMatchObject({ trials: 4, damaged: [] })
    let asked = 0
    expect(await notebook.backUp({ stopped: () => ++asked > 2 })).toBeUndefined()
  })

  test('N41: what is logged while a backup runs is kept, and each trial in it is whole', async () => {
    const notebook = await notebookOfMany(2)
    const logging: Promise<unknown>[] = []
    const made = await notebook.backUp({
      onProgress: () => logging.push(notebook.keepSettings({ appearance: 'dark' })),
    })
    await Promise.all(logging)
    expect(logging.length).toBe(4)
    const other = notebookOf()
    expect(await other.restore(made?.zip ?? new Blob())).toMatchObject({ record: { cameIn: 3 } })
  })

  test('N41: a trial that is damaged keeps no other from being backed up', async () => {
    const name = freshName()
    const notebook = await notebookOfMany(1, name)
    const store = new Store(name, presentSteps)
    await store.table('plans').update('plan-1', { flights: 'many' })
    store.close()
    const made = await notebook.backUp()
    expect(made).toMatchObject({ trials: 1, damaged: ['trial-1'] })
  })

  test('N63: what a restore would do is said by its own steps, and nothing of the notebook changes', async () => {
    const zip = await zipOf(await notebookOfMany(2))
    const other = await notebookWithTrial()
    await other.log({
      ...{ kind: 'note', text: 'only here', trialId: 'trial-1', sessionId: null },
      about: { kind: 'trial', id: 'trial-1' },
    })
    const before = await contentOf(other)
    const looked = await other.wouldRestore(zip, { name: 'mine.zip' })
    const question = planOf().question
    expect(looked).toMatchObject({
      ok: true,
      would: { file: 'mine.zip', total: 3, comeIn: [question, question], already: 0 },
    })
    expect(looked?.ok && looked.would.left).toMatchObject([{ because: 'other-content' }])
    expect(await contentOf(other)).toEqual(before)
    expect(await other.restore(zip)).toMatchObject({ record: { cameIn: 2, already: 0 } })
    expect(await other.wouldRestore(zip)).toMatchObject({ would: { comeIn: [], already: 2 } })
    expect(await other.wouldRestore(new Blob(['no zip']))).toMatchObject({ ok: false })
  })

  test('N64: work that is newer than the last backup is told, and after a week of it a backup is due', async () => {
    const day = 86_400_000
    const notebook = await notebookWithTrial()
    const never = await notebook.backupState()
    expect(never).toEqual({ at: null, trials: 1, houses: 0, kitchen: false, begun: true })
    expect(backupDue(never, testNow)).toBe(true)
    await notebook.keepBackedUp(testNow)
    const after = await notebook.backupState()
    expect(after).toEqual({ at: testNow, trials: 0, houses: 0, kitchen: false, begun: false })
    expect(backupDue(after, testNow + 30 * day)).toBe(false)
    await notebook.keepBackedUp(testNow - 1)
    await notebook.log({
      ...{ kind: 'note', text: 'later', trialId: 'trial-1', sessionId: null },
      about: { kind: 'trial', id: 'trial-1' },
    })
    const later = await notebook.backupState()
    expect(later).toMatchObject({ trials: 1, begun: true })
    expect(backupDue(later, testNow + 6 * day)).toBe(false)
    expect(backupDue(later, testNow + 7 * day)).toBe(true)
  })

  test('N64: what is in no backup is told by what that backup held, whatever the clocks say', async () => {
    const notebook = await notebookWithTrial()
    const backedUp = async () => {
      const made = await notebook.backUp()
      // The clock stood a year ahead as the backup was made, and was set right since.
      await notebook.keepBackedUp(testNow + 365 * 86_400_000, made?.held)
    }
    await backedUp()
    const none = { trials: 0, houses: 0, kitchen: false, begun: false }
    expect(await notebook.backupState()).toMatchObject(none)
    await notebook.log({
      ...{ kind: 'note', text: 'later', trialId: 'trial-1', sessionId: null },
      about: { kind: 'trial', id: 'trial-1' },
    })
    expect(await notebook.backupState()).toMatchObject({ ...none, trials: 1, begun: true })
    await backedUp()
    await notebook.keepKitchenThing({ id: 'taster-1', kind: 'taster', initials: 'XX' })
    expect(await notebook.backupState()).toMatchObject({ ...none, kitchen: true })
    await backedUp()
    // A plan that was written years before the backup.
    await notebook.createTrial({ ...planOf(), id: 'plan-2', trialId: 'trial-2', at: 1000 })
    expect(await notebook.backupState()).toMatchObject({ ...none, trials: 1 })
    await backedUp()
    expect(await notebook.backupState()).toMatchObject(none)
  })

  test('N42: a stopped restore tells how far it was, and the same backup brings the rest', async () => {
    const zip = await zipOf(await notebookOfMany(59))
    const notebook = notebookOf()
    let asked = 0
    const stopped = await notebook.restore(zip, { name: 'mine.zip', stopped: () => ++asked > 1 })
    // Forty come in at a time; it was stopped before the second forty.
    const half = { file: 'mine.zip', total: 60, cameIn: 40, already: 0, left: [], ended: 'stopped' }
    expect(stopped).toMatchObject({ ok: true, record: half })
    expect(await notebook.restoreRecord()).toMatchObject(half)
    expect(await notebook.summaries()).toHaveLength(40)
    const again = await notebook.restore(zip, { name: 'mine.zip' })
    expect(again).toMatchObject({ record: { cameIn: 20, already: 40, ended: 'whole' } })
    expect(await notebook.summaries()).toHaveLength(60)
    await notebook.dropRestoreRecord()
    expect(await notebook.restoreRecord()).toBeUndefined()
  })

  test('N42: each trial that did not come in is named with its own reason', async () => {
    const zip = await zipOf(await notebookOfMany(1))
    const files = unzipSync(new Uint8Array(await zip.arrayBuffer()))
    files['trials/cut.json'] = strToU8('{ "format": ')
    const bytes = zipSync(files)
    // The packed bytes of one trial are spoilt where its name stands in the local header.
    const at = Buffer.from(bytes).indexOf('trials/t-0.json') + 'trials/t-0.json'.length
    bytes.fill(255, at, at + 40)
    const notebook = notebookOf()
    const outcome = await notebook.restore(new Blob([new Uint8Array(bytes)]))
    expect(outcome).toMatchObject({ ok: true, record: { total: 3, cameIn: 1 } })
    const left = outcome.ok ? outcome.record.left : []
    expect(Object.fromEntries(left.map((each) => [each.file, each.because]))).toEqual({
      ...{ 'trials/t-0.json': 'broken-bytes', 'trials/cut.json': 'trouble' },
    })
  })

  test('N42: a thing of the kitchen or a house formula that a spoiled backup names twice comes in once', async () => {
    const files = unzipSync(
      new Uint8Array(await (await zipOf(await notebookOfMany(1))).arrayBuffer()),
    )
    const kitchen = JSON.parse(strFromU8(files['kitchen.json'] ?? new Uint8Array()))
    expect(kitchen.length).toBeGreaterThan(0)
    files['kitchen.json'] = strToU8(JSON.stringify([...kitchen, ...kitchen]))
    const notebook = notebookOf()
    const outcome = await notebook.restore(new Blob([new Uint8Array(zipSync(files))]))
    expect(outcome).toMatchObject({ record: { total: 2, cameIn: 2, ended: 'whole' } })
    const ids = (await notebook.kitchen()).map(({ id }) => id)
    expect(ids).toHaveLength(kitchen.length)
    expect(new Set(ids)).toEqual(new Set(kitchen.map(({ id }: { id: string }) => id)))
  })

  test('N42: a byte that was changed within a file of the backup is noticed by its checksum', async () => {
    const zip = await zipOf(await notebookOfMany(1))
    const files = unzipSync(new Uint8Array(await zip.arrayBuffer()))
    // Stored as they are, so that a changed byte still unpacks, and still reads as a trial.
    const bytes = zipSync(files, { level: 0 })
    const question = strFromU8(files['trials/t-0.json'] ?? new Uint8Array()).match(
      /"question": "(\w+)/,
    )?.[1]
    const at = Buffer.from(bytes).indexOf(`"question": "${question}`, bytes.indexOf(0))
    for (let from = at; from >= 0; from = Buffer.from(bytes).indexOf(`"${question}`, from + 1))
      bytes[from + '"question": "'.length] = 'X'.charCodeAt(0)
    const notebook = notebookOf()
    const outcome = await notebook.restore(new Blob([new Uint8Array(bytes)]))
    expect(outcome).toMatchObject({
      record: { cameIn: 0, left: [{ because: 'broken-bytes' }, { because: 'broken-bytes' }] },
    })
  })

  test('N42: a picture that is damaged in the backup is named; its trial comes in without it', async () => {
    const source = await notebookOfMany(1)
    const photo = {
      id: 'photo-9',
      trialId: 'trial-1',
      at: testNow,
      widthPixels: 2,
      heightPixels: 2,
    }
    const picture = new Blob([new Uint8Array([137, 80, 78, 71, 0, 255])], { type: 'image/png' })
    await source.addPhoto({ ...photo, mediaType: 'image/png' }, picture)
    const bytes = new Uint8Array(await (await zipOf(source)).arrayBuffer())
    const at = Buffer.from(bytes).indexOf(Buffer.from([137, 80, 78, 71, 0, 255]))
    bytes[at + 4] = 1
    const notebook = notebookOf()
    const outcome = await notebook.restore(new Blob([bytes]))
    expect(outcome).toMatchObject({
      record: { cameIn: 2, left: [], picturesLost: ['pictures/photo-9.png'], ended: 'whole' },
    })
    expect(await notebook.picture('photo-9')).toBeUndefined()
    expect(await notebook.restoreRecord()).toMatchObject({ picturesLost: ['pictures/photo-9.png'] })
  })

  test('N42: what is damaged here stays as it is, and the others come in', async () => {
    const zip = await zipOf(await notebookOfMany(1))
    const name = freshName()
    const notebook = await notebookWithTrial(name)
    const store = new Store(name, presentSteps)
    await store.table('plans').update('plan-1', { flights: 'many' })
    store.close()
    expect(await notebook.restore(zip)).toMatchObject({
      record: { cameIn: 1, left: [{ file: 'trials/trial-1.json', because: 'damaged-here' }] },
    })
  })

  test('N42: a full device ends a restore with what came in whole', async () => {
    const source = await notebookOfMany(59)
    const zip = await zipOf(source)
    const name = freshName()
    const notebook = notebookOf(name)
    await notebook.settings()
    let trials = 0
    const add = IDBObjectStore.prototype.add
    IDBObjectStore.prototype.add = function full(this: IDBObjectStore, ...given) {
      if (this.name === 'trials' && ++trials > 50)
        throw new DOMException('no room', 'QuotaExceededError')
      return add.apply(this, given)
    }
    try {
      const outcome = await notebook.restore(zip)
      expect(outcome).toMatchObject({ ok: true, record: { cameIn: 40, ended: 'out-of-room' } })
    } finally {
      IDBObjectStore.prototype.add = add
    }
    expect(await notebook.summaries()).toHaveLength(40)
    await notebook.restore(zip)
    const there = await contentOf(source)
    expect((await contentOf(notebook)).trials).toHaveLength(there.trials.length)
  })
})
