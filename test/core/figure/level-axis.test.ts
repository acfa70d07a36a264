import { expect, test } from 'vitest'
import { levelAxis } from '@/core/figure/level-axis.ts'

const level = (value: number | null, label = String(value)) => ({
  id: `l${label}`,
  value,
  label,
  control: false,
})

test('distances on the axis are the distances of the levels', () => {
  const axis = levelAxis([level(80), level(64), level(66)])
  const [first, second, third] = axis.positions
  expect(axis.positions.map((position) => position.value)).toEqual([64, 66, 80])
  const short = (second?.at ?? 0) - (first?.at ?? 0)
  const long = (third?.at ?? 0) - (second?.at ?? 0)
  // 66 - 64 = 2 and 80 - 66 = 14: seven times as far
  expect(long / short).toBeCloseTo(7, 10)
})

test('the outermost levels stand in from the ends by 16 parts of 132', () => {
  const axis = levelAxis([level(60), level(70)])
  expect(axis.positions[0]?.at).toBeCloseTo(0.16 / 1.32, 12)
  expect(axis.positions[1]?.at).toBeCloseTo(1.16 / 1.32, 12)
})

test('ticks are round numbers at their true places', () => {
  const axis = levelAxis([level(66), level(82)])
  expect(axis.ticks.map((tick) => tick.label)).toEqual([
    '64',
    '66',
    '68',
    '70',
    '72',
    '74',
    '76',
    '78',
    '80',
    '82',
    '84',
  ])
  for (const tick of axis.ticks) {
    expect(tick.at).toBeCloseTo((tick.value - axis.low) / (axis.high - axis.low), 12)
  }
})

test('one level, a negative level and a zero are placed inside', () => {
  for (const values of [[5], [0], [-3, 2], [0.0001, 0.0003]]) {
    for (const { at } of levelAxis(values.map((value) => level(value))).positions) {
      expect(at).toBeGreaterThan(0)
      expect(at).toBeLessThan(1)
    }
  }
})

test('options of a choice stand evenly spaced in plan order, without ticks', () => {
  const axis = levelAxis([level(null, 'stone'), level(null, 'steel')])
  expect(axis).toMatchObject({ ordered: false, ticks: [] })
  expect(axis.positions.map(({ label, at }) => [label, at])).toEqual([
    ['stone', 0.25],
    ['steel', 0.75],
  ])
})
