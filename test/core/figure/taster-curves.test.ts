import { expect, test } from 'vitest'
import { tasterCurves } from '@/core/figure/taster-curves.ts'

const levels = [60, 70].map((value) => ({ id: `l${value}`, value, label: '', control: false }))
const row = (tasterId: string | null, levelId: string, value: number) => ({
  tasterId,
  levelId,
  value,
})

test('each taster has means of their own; rows without a taster have no curve', () => {
  const curves = tasterCurves(
    levels,
    [
      row('a', 'l60', 4),
      row('a', 'l60', 6),
      row('a', 'l70', 8),
      row('b', 'l70', 3),
      row(null, 'l60', 1),
    ],
    'higher',
  )
  expect(
    curves.map(({ tasterId, points, bestLevelId }) => [
      tasterId,
      points.map(({ mean }) => mean),
      bestLevelId,
    ]),
  ).toEqual([
    ['a', [5, 8], 'l70'],
    ['b', [3], 'l70'],
  ])
})

test('lower can be better, a target is neared, a tie has no best', () => {
  const rows = [row('a', 'l60', 2), row('a', 'l70', 5)]
  expect(tasterCurves(levels, rows, 'lower')[0]?.bestLevelId).toBe('l60')
  expect(tasterCurves(levels, rows, 'target', 4)[0]?.bestLevelId).toBe('l70')
  expect(
    tasterCurves(levels, [row('a', 'l60', 5), row('a', 'l70', 5)], 'higher')[0]?.bestLevelId,
  ).toBeNull()
})
