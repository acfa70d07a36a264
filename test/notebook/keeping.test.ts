import 'fake-indexeddb/auto'
import { describe, expect, test } from 'vitest'
import type { Settings } from '@/notebook/settings-record.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'
import { contentOf, freshName, notebookOf, notebookWithTrial, testNow } from './notebook-of.ts'

describe('putting away', () => {
  test('N40: an answer stays beside a trial that is put away', async () => {
    const notebook = await notebookWithTrial()
    await notebook.keepAnswer('trial-1', 40, 'These pieces lean.')
    await notebook.archive('trial-1', true)
    const [line] = await notebook.summaries({ archived: true })
    expect(line).toMatchObject({ archived: true, revision: 41, answer: 'These pieces lean.' })
    await notebook.archive('trial-1', false)
    expect((await notebook.summaries())[0]?.answer).toBe('These pieces lean.')
  })

  test('N18: archived and binned since when, and back again', async () => {
    const notebook = await notebookWithTrial()
    const trial = async () => (await notebook.wholeTrial('trial-1'))?.trial
    await notebook.archive('trial-1', true)
    await notebook.bin('trial-1', true)
    expect(await trial()).toMatchObject({ archivedAt: testNow, binnedAt: testNow, revision: 42 })
    await notebook.archive('trial-1', false)
    await notebook.bin('trial-1', false)
    expect(await trial()).toEqual({ ...wholeTrialOf().trial, revision: 44 })
  })

  test('N19: erasing takes everything of the trial and nothing else', async () => {
    const notebook = await notebookWithTrial()
    const second = JSON.stringify(wholeTrialOf()).replaceAll('trial-1', 'trial-2')
    expect(second).toContain('trial-2')
    await notebook.keepDraft('plan/trial-1', { question: 'Wh' })
    await notebook.keepDraft('plan/trial-10', { question: 'Other' })
    // What was typed at the bench and on a half-filled ballot lies under its session.
    await notebook.keepDraft('bench/session-1', { note: 'too wet' })
    await notebook.keepDraft('ballot/session-1/taster-1/472', { liking: '7' })
    await notebook.keepDraft('bench/session-10', { note: 'of another' })
    const picture = new Blob(['x'], { type: 'image/png' })
    const photo = { at: 1, mediaType: 'image/png' as const, widthPixels: 1, heightPixels: 1 }
    await notebook.addPhoto({ ...photo, id: 'photo-2', trialId: 'trial-1' }, picture)
    // Taken back in another window meanwhile: it is not erased.
    expect(await notebook.erase('trial-1')).toBe(false)
    expect(await notebook.wholeTrial('trial-1')).toBeDefined()
    expect(await notebook.shelfNow('trial-1')).toBe('book')
    await notebook.bin('trial-1', true)
    expect(await notebook.shelfNow('trial-1')).toBe('bin')
    expect(await notebook.erase('trial-1')).toBe(true)
    expect(await notebook.shelfNow('trial-1')).toBeNull()
    expect(await notebook.wholeTrial('trial-1')).toBeUndefined()
    expect(await notebook.summaries({ binned: true, archived: true })).toEqual([])
    expect(await notebook.picture('photo-2')).toBeUndefined()
    expect(await notebook.draft('plan/trial-1')).toBeUndefined()
    expect(await notebook.draft('bench/session-1')).toBeUndefined()
    expect(await notebook.draft('ballot/session-1/taster-1/472')).toBeUndefined()
    expect(await notebook.draft('bench/session-10')).toEqual({ note: 'of another' })
    expect(await notebook.draft('plan/trial-10')).toEqual({ question: 'Other' })
    expect(await notebook.kitchen()).toEqual(wholeTrialOf().kitchen)
    await expect(notebook.exportTrial('trial-1')).rejects.toMatchObject({ reason: 'no-such-trial' })
  })
})

describe('kitchen, drafts, settings', () => {
  test('N20: a thing that a trial names cannot be removed, one that none names can', async () => {
    const notebook = await notebookWithTrial()
    for (const id of ['scale-1', 'flour-1', 'taster-1'])
      await expect(notebook.removeKitchenThing(id)).rejects.toMatchObject({ reason: 'in-use' })
    const tap = {
      id: 'tap-2',
      kind: 'tap',
      name: 'Well',
      coldestCelsius: 9,
      warmestCelsius: 9,
    } as const
    await notebook.keepKitchenThing(tap)
    expect(await notebook.kitchen()).toContainEqual(tap)
    await notebook.removeKitchenThing('tap-2')
    expect(await notebook.kitchen()).toEqual(wholeTrialOf().kitchen)
  })

  test('N21: an erased taster is nameless everywhere and stays so', async () => {
    const notebook = await notebookWithTrial()
    await notebook.keepKitchenThing({
      id: 'taster-1',
      kind: 'taster',
      initials: 'RV',
      note: 'likes rye',
    })
    await notebook.eraseTaster('taster-1')
    const erased = { id: 'taster-1', kind: 'taster', initials: '', erasedAt: testNow } as const
    const whole = await notebook.wholeTrial('trial-1')
    expect(whole?.kitchen).toContainEqual(erased)
    expect(whole?.ballots).toEqual(wholeTrialOf().ballots)
    const { text } = await notebook.exportTrial('trial-1')
    expect(text).not.toContain('RV')
    expect(text).not.toContain('rye')
    await expect(
      notebook.keepKitchenThing({ id: 'taster-1', kind: 'taster', initials: 'RV' }),
    ).rejects.toMatchObject({ reason: 'refused-record' })
    await notebook.eraseTaster('taster-1')
    expect(await notebook.kitchen()).toContainEqual(erased)
    await expect(notebook.eraseTaster('scale-1')).rejects.toMatchObject({
      reason: 'refused-record',
    })
  })

  test('N22: a draft comes back as it was typed, until it is dropped', async () => {
    const name = freshName()
    const notebook = notebookOf(name)
    const typed = { 'flour grams': '1,5x', question: ' ½ \u{1f35e} ' }
    await notebook.keepDraft('plan/new', typed)
    notebook.close()
    const again = notebookOf(name)
    expect(await again.draft('plan/new')).toEqual(typed)
    await again.dropDraft('plan/new')
    expect(await again.draft('plan/new')).toBeUndefined()
  })

  test('N23: the device gets its name once, and settings cannot change it', async () => {
    const name = freshName()
    const [one, other] = [notebookOf(name), notebookOf(name)]
    const [first, second] = await Promise.all([one.settings(), other.settings()])
    expect(first).toEqual(second)
    const sly = { appearance: 'dark', device: 'other' } as Partial<Settings>
    await one.keepSettings(sly)
    expect(await other.settings()).toEqual({ ...first, appearance: 'dark' })
    const before = await contentOf(one)
    await expect(one.keepSettings({ appearance: 'pink' as 'dark' })).rejects.toMatchObject({
      reason: 'refused-record',
    })
    expect(await contentOf(one)).toEqual(before)
  })
})
