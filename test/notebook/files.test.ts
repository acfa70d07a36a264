import 'fake-indexeddb/auto'
import { describe, expect, test } from 'vitest'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { trialFileName } from '@/notebook/export-trial.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'
import {
  contentOf,
  notebookAtTheTable,
  notebookOf,
  notebookWithTrial,
  testNow,
  trialAtTheTable,
} from './notebook-of.ts'

const text = writeTrialFile(wholeTrialOf())
const changed = (change: (whole: WholeTrial) => void) => {
  const whole = wholeTrialOf()
  change(whole)
  return writeTrialFile(whole)
}
const stranger = changed((whole) => {
  whole.trial.note = 'another one altogether'
})
const clash = { ok: false, reason: 'same-id-different-content', trialId: 'trial-1' }

describe('trial files in and out', () => {
  test('N24: export, import into an empty notebook, and the trial is identical, id for id', async () => {
    const first = await notebookWithTrial()
    await first.archive('trial-1', true)
    const exported = await first.exportTrial('trial-1')
    const second = notebookOf()
    expect(await second.importTrial(exported.text)).toEqual({
      ...{ ok: true, trialId: 'trial-1', already: false },
    })
    expect(await second.wholeTrial('trial-1')).toEqual(await first.wholeTrial('trial-1'))
    expect((await second.exportTrial('trial-1')).text).toBe(exported.text)
    expect(await second.summaries({ archived: true })).toEqual(
      await first.summaries({ archived: true }),
    )
  })

  test('N25: what is already here changes nothing, in whatever order it came', async () => {
    const notebook = await notebookWithTrial()
    const before = await contentOf(notebook)
    const turned = JSON.stringify({ ...JSON.parse(text), events: wholeTrialOf().events.reverse() })
    for (const again of [text, turned])
      expect(await notebook.importTrial(again)).toEqual({
        ...{ ok: true, trialId: 'trial-1', already: true },
      })
    expect(await contentOf(notebook)).toEqual(before)
  })

  test('N26: other content under the same id is refused; with keep both it comes as a copy', async () => {
    const notebook = await notebookWithTrial()
    const before = await contentOf(notebook)
    expect(await notebook.importTrial(stranger)).toMatchObject(clash)
    expect(await contentOf(notebook)).toEqual(before)
    const outcome = await notebook.importTrial(stranger, { keepBoth: true })
    if (!outcome.ok) throw new Error(outcome.reason)
    expect(outcome).toMatchObject({ already: false })
    expect(outcome.trialId).not.toBe('trial-1')
    const copy = await notebook.wholeTrial(outcome.trialId)
    expect(copy?.trial.note).toBe('another one altogether')
    expect(copy?.events).toHaveLength(32)
    expect(copy?.kitchen).toEqual(wholeTrialOf().kitchen)
    expect(await notebook.wholeTrial('trial-1')).toEqual(wholeTrialOf())
  })

  test('N26: a record’s id that another trial has is refused just so', async () => {
    const notebook = await notebookWithTrial()
    const before = await contentOf(notebook)
    const renamed = text.replaceAll('"trial-1"', '"trial-2"')
    expect(await notebook.importTrial(renamed)).toEqual({ ...clash, trialId: 'trial-2' })
    expect(await contentOf(notebook)).toEqual(before)
    expect(await notebook.importTrial(renamed, { keepBoth: true })).toMatchObject({ ok: true })
    expect(await notebook.summaries()).toHaveLength(2)
  })

  test('N27: what the kitchen holds stays as it is, and makes no trial different', async () => {
    const notebook = notebookOf()
    await notebook.keepKitchenThing({ id: 'taster-1', kind: 'taster', initials: 'RV' })
    await notebook.eraseTaster('taster-1')
    const here = {
      id: 'tap-1',
      kind: 'tap',
      name: 'Pump',
      coldestCelsius: 9,
      warmestCelsius: 30,
    } as const
    await notebook.keepKitchenThing(here)
    expect(await notebook.importTrial(text)).toMatchObject({ ok: true, already: false })
    const kitchen = await notebook.kitchen()
    expect(kitchen).toContainEqual(here)
    expect(kitchen).toContainEqual({
      id: 'taster-1',
      kind: 'taster',
      initials: '',
      erasedAt: testNow,
    })
    expect(kitchen).toHaveLength(wholeTrialOf().kitchen.length)
    expect(await notebook.importTrial(text)).toMatchObject({ ok: true, already: true })
  })

  test('N26: a copy that would show what a seal covers here says so, and kept beside it is a look in the log of the sealed trial', async () => {
    const notebook = await notebookAtTheTable()
    const looks = async () =>
      (await notebook.wholeTrial('trial-1'))?.events.filter(({ kind }) => kind === 'peeked') ?? []
    expect(await notebook.importTrial(text)).toMatchObject({ ok: false, uncovers: true })
    expect(await looks()).toEqual([])
    const copy = await notebook.importTrial(text, { keepBoth: true })
    expect(copy).toMatchObject({ ok: true, already: false })
    expect(await looks()).toMatchObject([
      { sessionId: 'session-1', reason: 'kept an open copy of it beside it' },
    ])
    // One that is under seal itself shows nothing.
    const noted = { ...trialAtTheTable(), trial: { ...trialAtTheTable().trial, note: 'other' } }
    const sealedCopy = writeTrialFile(noted)
    expect(await notebook.importTrial(sealedCopy)).toMatchObject({ ok: false, uncovers: false })
    expect(await notebook.importTrial(sealedCopy, { keepBoth: true })).toMatchObject({ ok: true })
    expect(await looks()).toHaveLength(1)
  })

  test('the file of a trial that was thrown out says where that lies', async () => {
    const notebook = await notebookWithTrial()
    await notebook.bin('trial-1', true)
    expect(await notebook.importTrial(text)).toMatchObject({ ok: false, binned: true })
    await notebook.bin('trial-1', false)
    expect(await notebook.importTrial(stranger)).toMatchObject({ ok: false, binned: false })
  })

  test('N27: an id that is a thing of another kind here is a clash', async () => {
    const notebook = notebookOf()
    const scale = {
      id: 'taster-1',
      kind: 'scale',
      name: 'S',
      resolutionGrams: 1,
      capacityGrams: 9,
    } as const
    await notebook.keepKitchenThing(scale)
    expect(await notebook.importTrial(text)).toEqual(clash)
    expect(await notebook.kitchen()).toEqual([scale])
    const outcome = await notebook.importTrial(text, { keepBoth: true })
    const copy = outcome.ok ? await notebook.wholeTrial(outcome.trialId) : undefined
    expect(copy?.kitchen.filter((thing) => thing.kind === 'taster')).toHaveLength(2)
    expect(await notebook.kitchen()).toContainEqual(scale)
  })

  test.each([
    ['broken JSON', text.slice(0, -3), 'not-json'],
    ['a foreign document', '{"format":"recipe"}', 'not-a-trial-file'],
    ['a newer version', text.replace(/"version": \d+/, '"version": 999'), 'newer-version'],
    ['a stray key', text.replace('"seed"', '"sead"'), 'shape'],
    ['a dangling name', text.replace('"planId": "plan-1"', '"planId": "plan-7"'), 'reference'],
  ])('N28: %s is refused and the notebook stays untouched', async (_, broken, reason) => {
    const notebook = await notebookWithTrial()
    const before = await contentOf(notebook)
    for (const outcome of [
      await notebook.importTrial(broken, { keepBoth: true }),
      await notebook.openSample(broken),
    ]) {
      expect(outcome).toMatchObject({ ok: false, reason: 'trouble' })
      if (!outcome.ok && outcome.reason === 'trouble')
        expect(outcome.troubles.map((each) => each.reason)).toContain(reason)
    }
    expect(await contentOf(notebook)).toEqual(before)
  })

  test('N29: a sample’s last event was three minutes ago, each time it is opened', async () => {
    const notebook = notebookOf()
    const opened = [await notebook.openSample(text), await notebook.openSample(text)]
    const [first, second] = opened.map((each) => (each.ok ? each.trialId : ''))
    expect(first).not.toBe(second)
    const whole = await notebook.wholeTrial(first ?? '')
    const ats = whole?.events.map((event) => event.at) ?? []
    expect(Math.max(...ats)).toBe(testNow - 180_000)
    // The fixture's day from its first to its last event: 31 steps of five minutes.
    expect(Math.max(...ats) - Math.min(...ats)).toBe(155 * 60_000)
    expect(whole?.trial.createdAt).toBe(testNow - 180_000 - (155 + 600) * 60_000)
    expect(await notebook.kitchen()).toEqual(wholeTrialOf().kitchen)
    expect(await notebook.summaries()).toHaveLength(2)
  })

  test('N30: the name tells the question only when nothing can be blind any more', () => {
    const answered = wholeTrialOf()
    expect(trialFileName(answered)).toBe('does-more-water-open-the-crumb.evenhand.json')
    const sealed = {
      ...answered,
      events: answered.events.filter((each) => each.kind !== 'unsealed'),
    }
    // Made ten hours before the first mix of 2 May 2026, 06:00 UTC.
    expect(trialFileName(sealed)).toBe('trial-2026-05-01.evenhand.json')
    const named = (question: string) =>
      trialFileName({ ...answered, plans: answered.plans.map((plan) => ({ ...plan, question })) })
    expect(named('Crème brûlée / rye?')).toBe('creme-brulee-rye.evenhand.json')
    expect(named('???')).toBe('trial-2026-05-01.evenhand.json')
  })
})
