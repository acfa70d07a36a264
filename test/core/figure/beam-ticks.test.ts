import { expect, test } from 'vitest'
import { beamTicks } from '@/core/figure/beam-ticks.ts'
import { levelAxis } from '@/core/figure/level-axis.ts'

const level = (value: number | null, label = String(value)) => ({
  id: label,
  value,
  label,
  control: false,
})

test('strokes stand at round values, and the rounder ones are long', () => {
  // 60 and 80 with 16 % of room at either end: 56.8 to 83.2; strokes every 1, long every 5.
  const ticks = beamTicks(levelAxis([level(60), level(80)]))
  expect(ticks).toHaveLength(27)
  expect(ticks.filter(({ long }) => long).map(({ at }) => Math.round(56.8 + at * 26.4))).toEqual([
    60, 65, 70, 75, 80,
  ])
})

test('a choice has no strokes', () => {
  expect(beamTicks(levelAxis([level(null, 'stone'), level(null, 'steel')]))).toEqual([])
})
