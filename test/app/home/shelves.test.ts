import { expect, test } from 'vitest'
import { shelfOf, trialsOnShelf } from '@/app/home/shelves.ts'
import type { Summary } from '@/notebook/summary-record.ts'

const summary = (question: string, change: Partial<Summary> = {}): Summary => ({
  trialId: question,
  revision: 0,
  question,
  factorName: 'hydration',
  unitOfMeasure: '% of flour',
  levels: [],
  stage: 'planning',
  sealed: false,
  sessionsDone: 0,
  plannedSessions: 2,
  lastAt: 0,
  createdAt: 0,
  archived: false,
  binned: false,
  ...change,
})

test('a search finds every word in question or factor, in any order and case', () => {
  const all = [summary('How wet should our focaccia be?'), summary('Stone or steel?')]
  const found = (search: string) => trialsOnShelf(all, 'book', search).map((each) => each.question)
  expect(found('FOCACCIA wet')).toEqual(['How wet should our focaccia be?'])
  expect(found('hydration steel')).toEqual(['Stone or steel?'])
  expect(found('focaccia steel')).toEqual([])
  expect(found('')).toHaveLength(2)
})

test('an archived trial that was binned lies in the bin', () => {
  expect(shelfOf({ archived: true, binned: true })).toBe('bin')
  expect(shelfOf({ archived: true, binned: false })).toBe('archive')
})
