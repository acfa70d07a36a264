import { expect, test } from 'vitest'
import { responseChart } from '@/core/figure/response-chart.ts'

const levels = [60, 70, 75].map((value) => ({
  id: `l${value}`,
  value,
  label: `${value}`,
  control: value === 70,
}))
const score = { scale: { kind: 'nine-point' as const, anchors: [] }, margin: 1 }
const row = (levelId: string, value: number) => ({
  levelId,
  tasterId: 't1',
  sessionId: 's1',
  value,
})

const chart = responseChart({
  levels,
  response: score,
  rows: [row('l60', 4), row('l60', 4), row('l70', 6), row('l75', 5)],
  means: [
    { levelId: 'l75', estimate: 5, low: 4, high: 6 },
    { levelId: 'l60', estimate: 4, low: 3, high: 5 },
    { levelId: 'l70', estimate: 6, low: 5, high: 7 },
  ],
  curve: [{ level: 60, fit: 4, low: 3, high: 5 }],
  best: { value: 71, low: 66, high: null },
})

test('every row is a point near its level, and equal scores do not hide one another', () => {
  expect(chart.points).toHaveLength(4)
  const [first, second] = chart.points
  expect(first?.at).not.toBe(second?.at)
  const place = chart.x.positions[0]?.at ?? 0
  for (const point of [first, second])
    expect(Math.abs((point?.at ?? 0) - place)).toBeLessThanOrEqual(0.025)
})

test('points never reach half way to the neighbouring level', () => {
  const close = responseChart({
    levels: [60, 61, 90].map((value) => ({ id: `l${value}`, value, label: '', control: false })),
    response: score,
    rows: Array.from({ length: 30 }, () => row('l60', 5)),
    means: [],
    curve: null,
    best: null,
  })
  const gap = (close.x.positions[1]?.at ?? 0) - (close.x.positions[0]?.at ?? 0)
  for (const { at } of close.points) {
    expect(at - (close.x.positions[0]?.at ?? 0)).toBeLessThan(gap / 2)
  }
})

test('means stand in axis order at their levels, the curve at its true place', () => {
  expect(chart.means.map(({ levelId }) => levelId)).toEqual(['l60', 'l70', 'l75'])
  expect(chart.curve[0]?.at).toBeCloseTo(chart.x.positions[0]?.at ?? Number.NaN, 12)
})

test('the best reaches the end of the axis on its open side', () => {
  // axis 60 - 0.16 × 15 = 57.6 to 75 + 2.4 = 77.4: width 19.8
  expect(chart.best?.at).toBeCloseTo((71 - 57.6) / 19.8, 12)
  expect(chart.best?.fromAt).toBeCloseTo((66 - 57.6) / 19.8, 12)
  expect(chart.best).toMatchObject({ toAt: 1, openLow: false, openHigh: true })
})

test('the margin lies around the mean of the control', () => {
  expect(chart.control?.estimate).toBe(6)
  expect(chart.margin).toEqual({ around: 6, low: 5, high: 7 })
})

test('scores are drawn on their whole scale', () => {
  expect([chart.y.low, chart.y.high]).toEqual([1, 9])
})
