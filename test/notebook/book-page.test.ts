import 'fake-indexeddb/auto'
import { liveQuery } from 'dexie'
import { describe, expect, test, vi } from 'vitest'
import { type BookPageAsked, type BookSorting, shelfOf, wholeBook } from '@/notebook/book-page.ts'
import { presentSteps } from '@/notebook/create-notebook.ts'
import { Store } from '@/notebook/store.ts'
import type { Summary } from '@/notebook/summary-record.ts'
import { kitchenOf } from '../trial-of/kitchen-of.ts'
import { planOf } from '../trial-of/plan-of.ts'
import {
  freshName,
  notebookAtTheTable,
  notebookOf,
  notebookWithTrial,
  testNow,
} from './notebook-of.ts'

const first: BookPageAsked = { shelf: 'book', search: '', most: 50 }

async function bookOf(trials: number, name = freshName()) {
  let now = testNow
  const notebook = notebookOf(name, () => {
    now += 1000
    return now
  })
  for (const thing of kitchenOf()) await notebook.keepKitchenThing(thing)
  for (let at = 0; at < trials; at += 1) {
    const trialId = `trial-${String(at).padStart(3, '0')}`
    const question = at === 3 ? 'Stone or steel?' : `Question ${at}`
    const plan = {
      ...planOf(),
      id: `${trialId}-plan`,
      trialId,
      at: testNow - trials + at,
      question,
    }
    await notebook.createTrial(plan)
  }
  return notebook
}

describe('a page of the home list', () => {
  test('holds the first lines alone, newest first, and says how many are left', async () => {
    const notebook = await bookOf(7)
    const everything = await notebook.summaries()
    const page = await notebook.bookPage({ ...first, most: 3 })
    expect(page.lines).toEqual(everything.slice(0, 3))
    expect(page).toMatchObject({ left: 4, trials: 7, putAway: false })
    const rest = await notebook.bookPage(first)
    expect(rest.lines).toEqual(everything)
    expect(rest.left).toBe(0)
  })

  test('a search over and over sees each change at once, made here or over another connection', async () => {
    const name = freshName()
    const notebook = await bookOf(5, name)
    const other = notebookOf(name)
    const found = async (search: string) =>
      (await notebook.bookPage({ ...first, search })).lines.map(({ trialId }) => trialId)
    expect(await found('steel')).toEqual(['trial-003'])
    expect(await found('steel')).toEqual(['trial-003'])
    const asked: string[][] = []
    const search = () => notebook.bookPage({ ...first, search: 'hearth' })
    const watch = liveQuery(search).subscribe(({ lines }) => {
      asked.push(lines.map(({ trialId }) => trialId))
    })
    await vi.waitFor(() => expect(asked).toEqual([[]]))
    await other.keepAnswer('trial-002', 1, 'The hearth was best.')
    await vi.waitFor(() => expect(asked.at(-1)).toEqual(['trial-002']))
    await notebook.bin('trial-002', true)
    await notebook.erase('trial-002')
    await vi.waitFor(() => expect(asked.at(-1)).toEqual([]))
    watch.unsubscribe()
    expect(await found('')).toHaveLength(4)
    expect(await found('question')).toHaveLength(3)
    other.close()
  })

  test('of one shelf counts what lies there; binned counts before archived', async () => {
    const notebook = await bookOf(5)
    await notebook.archive('trial-001', true)
    await notebook.archive('trial-002', true)
    await notebook.bin('trial-002', true)
    const ids = async (shelf: BookPageAsked['shelf'], most = 50) => {
      const { lines, left, putAway } = await notebook.bookPage({ ...first, shelf, most })
      expect(putAway).toBe(true)
      return [...lines.map(({ trialId }) => trialId), left]
    }
    const shown = new Set(await ids('book'))
    expect(shown).toEqual(new Set([0, 'trial-000', 'trial-003', 'trial-004']))
    expect(await ids('book', 2)).toHaveLength(3)
    expect((await ids('book', 2)).at(-1)).toBe(1)
    expect(await ids('archive')).toEqual(['trial-001', 0])
    expect(await ids('bin')).toEqual(['trial-002', 0])
    expect(shelfOf({ archived: true, binned: true })).toBe('bin')
  })

  test('finds every word in question or factor, in any order and case', async () => {
    const notebook = await bookOf(5)
    const found = async (search: string) => {
      const { lines } = await notebook.bookPage({ ...first, search })
      return lines.map(({ question }) => question)
    }
    expect(await found('STEEL stone')).toEqual(['Stone or steel?'])
    expect(await found('steel hydration')).toEqual(['Stone or steel?'])
    expect(await found('steel question')).toEqual([])
    expect(await found('')).toHaveLength(5)
    const { left } = await notebook.bookPage({ ...first, search: 'question', most: 1 })
    expect(left).toBe(3)
  })

  test('N62: finds what stands in flours, notes and the answer, and nothing of them while codes are kept', async () => {
    const notebook = await notebookWithTrial()
    await notebook.log({
      ...{ kind: 'note', text: 'The oven door hung open', trialId: 'trial-1', sessionId: null },
      about: { kind: 'trial', id: 'trial-1' },
    })
    const found = async (search: string, from = notebook) =>
      (await from.bookPage({ ...first, search })).lines.length
    expect(await found('bread FLOUR')).toBe(1)
    expect(await found('oven hung')).toBe(1)
    expect(await found('wetter is chewier')).toBe(0)
    const { trial } = (await notebook.wholeTrial('trial-1')) ?? { trial: { revision: 0 } }
    await notebook.keepAnswer('trial-1', trial.revision, 'Wetter is chewier.')
    expect(await found('wetter is chewier')).toBe(1)
    const covered = await notebookAtTheTable()
    expect((await covered.bookPage(first)).lines[0]?.sealed).toBe(true)
    expect(await found('bread flour', covered)).toBe(0)
  })

  test('shows only the kind, the state and the flour that were chosen, in the order that was chosen', async () => {
    const notebook = await bookOf(4)
    const asked = async (sorting: Partial<BookSorting>) => {
      const page = await notebook.bookPage({ ...first, sorting: { ...wholeBook, ...sorting } })
      return page.lines.map(({ question }) => question)
    }
    expect(await asked({ order: 'question' })).toEqual([
      ...['Question 0', 'Question 1', 'Question 2', 'Stone or steel?'],
    ])
    expect(await asked({ factorKind: 'hydration' })).toHaveLength(4)
    expect(await asked({ factorKind: 'salt' })).toEqual([])
    expect(await asked({ state: 'planning' })).toHaveLength(4)
    expect(await asked({ state: 'answered' })).toEqual([])
    expect(await asked({ flour: 'Bread flour' })).toHaveLength(4)
    expect(await asked({ flour: 'Rye' })).toEqual([])
    const { left } = await notebook.bookPage({
      ...{ ...first, most: 1, sorting: { ...wholeBook, state: 'planning' } },
    })
    expect(left).toBe(3)
    const choices = await notebook.bookChoices()
    expect(choices.factorKinds).toEqual(['hydration'])
    expect(choices.flours).toContain('Bread flour')
  })

  test('N62: makes lines anew, once, that were stored before they held what is searched', async () => {
    const name = freshName()
    const notebook = await notebookWithTrial(name)
    notebook.close()
    const store = new Store(name, presentSteps)
    const [line] = await store.summaries.toArray()
    const { flours: _, notes: __, factorKind: ___, ...old } = line as Summary
    await store.summaries.put({ ...old, answer: 'As it was found.' })
    await store.drafts.delete('form-of-lines')
    store.close()
    const again = notebookOf(name)
    const { lines } = await again.bookPage({ ...first, search: 'bread flour' })
    expect(lines).toEqual([{ ...line, answer: 'As it was found.' }])
  })

  test('has the line of a trial whose log was just written, and one made anew where the stored one is stale', async () => {
    const name = freshName()
    const notebook = await notebookWithTrial(name)
    const before = await notebook.bookPage(first)
    const { lines } = before
    await notebook.log({
      ...{ kind: 'note', text: 'x', trialId: 'trial-1', sessionId: null },
      about: { kind: 'trial', id: 'trial-1' },
    })
    const after = await notebook.bookPage(first)
    const notes = `${lines[0]?.notes}\nx`
    expect(after.lines).toEqual([{ ...lines[0], revision: 41, lastAt: testNow, notes }])
    await notebook.bin('trial-1', false)
    const store = new Store(name, presentSteps)
    await store.summaries.update('trial-1', { revision: 3, question: 'stale' })
    const [line] = (await notebook.bookPage(first)).lines
    expect(line?.question).toBe(lines[0]?.question)
    store.close()
  })

  test('reads as many trials as it shows, whatever the notebook holds', async () => {
    const name = freshName()
    const notebook = await bookOf(40, name)
    const got = vi.spyOn(IDBObjectStore.prototype, 'get')
    const many = vi.spyOn(IDBObjectStore.prototype, 'getAll')
    try {
      await notebook.bookPage({ ...first, most: 5 })
      expect(got.mock.calls.length).toBeLessThanOrEqual(10)
      expect(many).not.toHaveBeenCalled()
    } finally {
      got.mockRestore()
      many.mockRestore()
    }
  })

  test('opening a notebook reads no trial whose line is there', async () => {
    const name = freshName()
    const notebook = await bookOf(12, name)
    notebook.close()
    const got = vi.spyOn(IDBObjectStore.prototype, 'get')
    try {
      const again = notebookOf(name)
      await again.settings()
      expect(got.mock.calls.length).toBeLessThanOrEqual(4)
    } finally {
      got.mockRestore()
    }
  })
})

test('the newest trials that something was made of, without those that keep their codes or lie in the bin', async () => {
  const notebook = await notebookWithTrial()
  const plan = { ...planOf(), id: 'new-plan', trialId: 'new' }
  await notebook.createTrial(plan)
  expect(await notebook.newestBegun(10)).toEqual(['trial-1'])
  expect(await notebook.newestBegun(0)).toEqual([])
  await notebook.archive('trial-1', true)
  expect(await notebook.newestBegun(10)).toEqual(['trial-1'])
  await notebook.bin('trial-1', true)
  expect(await notebook.newestBegun(10)).toEqual([])
})

test('a search does not find a trial by an answer that a lesson covers, and does again once the lesson has ended', async () => {
  const notebook = await bookOf(2)
  const [line] = (await notebook.bookPage(first)).lines
  if (!line) throw new Error('the book has two trials')
  await notebook.keepAnswer(line.trialId, line.revision, 'Best in between, at 74 %.')
  const found = async () =>
    (await notebook.bookPage({ ...first, search: 'between' })).lines.map(({ trialId }) => trialId)
  expect(await found()).toEqual([line.trialId])
  await notebook.keepSettings({ lessons: [line.trialId] })
  expect(await found()).toEqual([])
  await notebook.keepSettings({ lessons: [] })
  expect(await found()).toEqual([line.trialId])
})
