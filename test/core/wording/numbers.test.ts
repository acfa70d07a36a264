import { expect, test } from 'vitest'
import { findingsReasons } from '@/core/findings/reason.ts'
import {
  decimalText,
  plainNumber,
  probabilityText,
  signedText,
  thousandsText,
} from '@/core/units/number-text.ts'
import { differenceText, intervalText } from '@/core/wording/findings/difference-text.ts'
import { reasonText } from '@/core/wording/findings/reason-text.ts'
import { cautions } from '@/core/wording/tasting/cautions.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { levelNameText, placeText } from '@/core/wording/words/level-text.ts'
import { countText, listText } from '@/core/wording/words/list-text.ts'

test('numbers carry a true minus sign and no minus zero', () => {
  expect(decimalText(-1.25, 1)).toBe('−1.3')
  expect(decimalText(-0.04, 1)).toBe('0.0')
  expect(signedText(0.04, 1)).toBe('0.0')
  expect(plainNumber(-66.4)).toBe('−66.4')
  expect(plainNumber(0.1 + 0.2)).toBe('0.3')
  expect(() => decimalText(Number.NaN, 1)).toThrow()
})

test('differences are written with as many decimals as their size needs', () => {
  expect([1.74, -0.5, 0.042, 0, 1e-15].map((value) => differenceText(value))).toEqual([
    '+1.7',
    '−0.50',
    '+0.042',
    '0.0',
    '0.0',
  ])
  // half width 1.2: one decimal
  expect(intervalText(-1.2, 1.2)).toBe('−1.2 to 1.2')
})

test('a tiny p is not given a false exactness', () => {
  expect([0.0004, 0.001, 0.0496].map(probabilityText)).toEqual(['below 0.001', '0.001', '0.050'])
})

test('durations, counts and lists read as they are spoken', () => {
  expect([45, 390, 360, 4800, 183_600].map(durationText)).toEqual([
    '45 s',
    '6 min 30 s',
    '6 min',
    '1 h 20 min',
    '2 days 3 h',
  ])
  expect([
    countText(1, 'session'),
    countText(3, 'session'),
    countText(12, 'batch', 'batches'),
  ]).toEqual(['one session', 'three sessions', '12 batches'])
  expect(listText(['66', '70', '74'])).toBe('66, 70 and 74')
})

test('levels carry their unit, worked-out places one decimal more than the levels', () => {
  expect(levelNameText({ name: 66.4 }, '% of flour')).toBe('66.4 %')
  expect(levelNameText({ name: 'steel' }, '')).toBe('steel')
  expect(placeText(73.628, [66, 70.5])).toBe('73.63')
})

test('every reason of the findings has a sentence of its own', () => {
  const sentences = findingsReasons.map((reason) => reasonText({ reason }))
  expect(new Set(sentences).size).toBe(findingsReasons.length)
  for (const sentence of sentences) expect(sentence).toMatch(/^[A-Z].*\.$/)
  expect(reasonText({ reason: 'margin-too-fine', sessions: 4 })).toContain(
    'Four sessions would answer it.',
  )
})

test('allergens of Regulation (EU) 1169/2011 Annex II (14) and the US list (9, with sesame) are all named', () => {
  const text = cautions.find(({ topic }) => topic === 'allergens')?.text.toLowerCase() ?? ''
  const european = [
    'gluten',
    'crustaceans',
    'eggs',
    'fish',
    'peanuts',
    'soybeans',
    'milk',
    'nuts',
    'celery',
    'mustard',
    'sesame',
    'sulphites',
    'lupin',
    'molluscs',
  ]
  const american = [
    'milk',
    'eggs',
    'fish',
    'crustacean shellfish',
    'tree nuts',
    'wheat',
    'peanuts',
    'soybeans',
    'sesame',
  ]
  for (const allergen of [...european, ...american]) expect(text).toContain(allergen)
})

test('a comma at each thousand', () => {
  expect([0, 999, 1000, 10_000, 1_234_567].map(thousandsText)).toEqual([
    '0',
    '999',
    '1,000',
    '10,000',
    '1,234,567',
  ])
})
