import 'fake-indexeddb/auto'
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate'
import { describe, expect, test } from 'vitest'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { OpenNotebook } from '@/notebook/notebook.ts'
import { dataVersion } from '@/trial-file/data-version.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { planOf } from '../trial-of/plan-of.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'
import {
  contentOf,
  notebookAtTheTable,
  notebookOf,
  notebookWithTrial,
  testNow,
} from './notebook-of.ts'

const bytesOf = async (blob: Blob | undefined) =>
  blob ? [...new Uint8Array(await blob.arrayBuffer())] : undefined

async function fullNotebook() {
  const notebook = await notebookWithTrial()
  await notebook.createTrial({ ...planOf(), id: 'plan-2', trialId: 'trial-2' })
  await notebook.bin('trial-2', true)
  await notebook.keepSettings({ appearance: 'dark', cautionsSeen: ['oven'] })
  const photo = { id: 'photo-2', trialId: 'trial-1', at: testNow, mediaType: 'image/png' as const }
  const picture = new Blob([new Uint8Array([137, 80, 78, 71, 0, 255])], { type: 'image/png' })
  await notebook.addPhoto({ ...photo, widthPixels: 2, heightPixels: 2 }, picture)
  return notebook
}

/** The zip of a notebook. */
async function zipOf(notebook: OpenNotebook): Promise<Blob> {
  const made = await notebook.backUp()
  if (!made) throw new Error('nobody stopped it')
  return made.zip
}

const fileOf = (files: Record<string, Uint8Array>, name: string) => files[name] ?? new Uint8Array()

/** The backup with some of its files changed; undefined takes one out. */
async function tampered(backup: Blob, files: Record<string, string | undefined>) {
  const all = unzipSync(new Uint8Array(await backup.arrayBuffer()))
  for (const [name, text] of Object.entries(files)) {
    if (text === undefined) delete all[name]
    else all[name] = strToU8(text)
  }
  return new Blob([new Uint8Array(zipSync(all))])
}

describe('backup and restore', () => {
  test('N31: an empty notebook gets everything back but the other device’s name', async () => {
    const first = await fullNotebook()
    const second = notebookOf()
    const { device } = await second.settings()
    const restored = await second.restore(await zipOf(first))
    expect(restored).toMatchObject({
      ...{ ok: true, record: { total: 2, cameIn: 2, already: 0, left: [], ended: 'whole' } },
    })
    const there = await contentOf(first)
    expect(await contentOf(second)).toEqual({ ...there, settings: { ...there.settings, device } })
    expect(await bytesOf(await second.picture('photo-2'))).toEqual([137, 80, 78, 71, 0, 255])
    expect((await second.picture('photo-2'))?.type).toBe('image/png')
  })

  test('N31: a backup is a plain zip of trial files and JSON', async () => {
    const notebook = await fullNotebook()
    const files = unzipSync(new Uint8Array(await (await zipOf(notebook)).arrayBuffer()))
    expect(Object.keys(files).toSorted((a, b) => (a < b ? -1 : 1))).toEqual([
      ...['backup.json', 'houses.json', 'kitchen.json', 'pictures/photo-2.png', 'settings.json'],
      ...['trials/trial-1.json', 'trials/trial-2.json'],
    ])
    const { text } = await notebook.exportTrial('trial-1')
    expect(strFromU8(fileOf(files, 'trials/trial-1.json'))).toBe(text)
    expect(JSON.parse(strFromU8(fileOf(files, 'backup.json')))).toEqual({
      ...{ format: 'evenhand-backup', version: dataVersion },
    })
  })

  test('N32: what is here stays; each trial comes in by the rules of import', async () => {
    const backup = await zipOf(await fullNotebook())
    const other = notebookOf()
    const whole = wholeTrialOf()
    whole.trial.note = 'gone on by itself'
    await other.importTrial(writeTrialFile(whole))
    await other.keepKitchenThing({ id: 'taster-1', kind: 'taster', initials: 'XX' })
    const broken = await tampered(backup, { 'trials/trial-3.json': '{' })
    const restored = await other.restore(broken)
    expect(restored).toMatchObject({ ok: true, record: { total: 3, cameIn: 1, already: 0 } })
    expect(restored.ok && restored.record.left).toMatchObject([
      { file: 'trials/trial-1.json', because: 'other-content' },
      { file: 'trials/trial-3.json', because: 'trouble', troubles: [{ reason: 'not-json' }] },
    ])
    expect((await other.wholeTrial('trial-1'))?.trial.note).toBe('gone on by itself')
    expect(await other.wholeTrial('trial-2')).toBeDefined()
    expect(await other.kitchen()).toContainEqual({ id: 'taster-1', kind: 'taster', initials: 'XX' })
  })

  test('N32: a trial that is under seal here is left by its file name alone, though the backup holds it open', async () => {
    const backup = await zipOf(await fullNotebook())
    const restored = await (await notebookAtTheTable()).restore(backup)
    expect(restored.ok && restored.record.left).toMatchObject([
      { file: 'trials/trial-1.json', question: null, because: 'other-content' },
    ])
    const openHere = notebookOf()
    await openHere.importTrial(writeTrialFile({ ...wholeTrialOf(), events: [], ballots: [] }))
    const told = await openHere.restore(backup)
    expect(told.ok && told.record.left[0]?.question).toBe(planInForce(wholeTrialOf()).question)
  })

  test('N33: what is no sound backup is refused and nothing is touched', async () => {
    const backup = await zipOf(await fullNotebook())
    const notebook = await notebookWithTrial()
    const before = await contentOf(notebook)
    const unsound = { ok: false, reason: 'not-a-backup' }
    const kitchen = '[{"id":"x","kind":"spoon"}]'
    const headed = (version: number) => `{"format":"evenhand-backup","version":${version}}`
    for (const zip of [
      new Blob(['no zip at all']),
      backup.slice(0, Math.floor(backup.size / 2)),
      await tampered(backup, { 'backup.json': undefined }),
      await tampered(backup, { 'kitchen.json': kitchen }),
      await tampered(backup, { 'settings.json': '{"appearance":"dark"}' }),
      await tampered(backup, { 'backup.json': headed(0) }),
    ])
      expect(await notebook.restore(zip)).toEqual(unsound)
    expect(
      await notebook.restore(await tampered(backup, { 'backup.json': headed(dataVersion + 1) })),
    ).toEqual({
      ...{ ok: false, reason: 'newer-version', found: dataVersion + 1, known: dataVersion },
    })
    expect(await contentOf(notebook)).toEqual(before)
  })
})
