import { expect, test } from 'vitest'
import { bestLabel } from '@/core/wording/findings/best-label.ts'
import { boundText } from '@/core/wording/findings/best-sentence.ts'

const levels = [62, 65, 71]
const said = (low: number | null, high: number | null) =>
  boundText({ kind: 'interval', low, high }, levels, '%')

test('an interval inside the levels tried names both ends, with one decimal more than the levels', () => {
  expect(said(63.21, 68.04)).toBe(', somewhere between 63.2 and 68.0 %')
})

test('an end beyond the levels tried is not named: there nothing was baked', () => {
  expect(said(16.3, 68)).toBe(', at most 68.0 % and not bounded below')
  expect(said(64, 90)).toBe(', at least 64.0 % and not bounded above')
  expect(said(16.3, 90)).toBe(', but these data do not bound it on either side')
  expect(bestLabel({ value: 66.3, low: 16.3, high: 68 }, levels, '%')).toBe(
    'best 66.3, at most 68.0 %',
  )
})

test('the ends themselves were tried', () => {
  expect(said(62, 71)).toBe(', somewhere between 62.0 and 71.0 %')
})

test('a set outside a gap bounds nothing', () => {
  expect(boundText({ kind: 'outside', low: 64, high: 66 }, levels, '%')).toContain(
    'only away from the middle',
  )
})
