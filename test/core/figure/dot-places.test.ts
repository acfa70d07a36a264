import { expect, test } from 'vitest'
import { type DrawnValue, dotPlaces } from '@/core/figure/dot-places.ts'

/** Invented scores: made only to crowd the picture. */
function drawn(counts: Record<number, number>, stepPixels: number, levelId = 'a'): DrawnValue[] {
  return Object.entries(counts).flatMap(([value, count]) =>
    Array.from({ length: count }, () => ({ levelId, heightPixels: Number(value) * stepPixels })),
  )
}

function leastDistance(values: readonly DrawnValue[], { offsets }: ReturnType<typeof dotPlaces>) {
  let least = Number.POSITIVE_INFINITY
  values.forEach((a, i) => {
    values.forEach((b, j) => {
      if (j <= i || a.levelId !== b.levelId) return
      const [one, other] = [offsets[i], offsets[j]]
      if (!one || !other) throw new Error('every dot has a place')
      const up = a.heightPixels + one.up - (b.heightPixels + other.up)
      least = Math.min(least, Math.hypot(one.across - other.across, up))
    })
  })
  return least
}

test.each([
  ['a desk', 60, 26],
  ['a phone', 44, 24],
])('on %s 24 scores of nine points a level do not touch', (_, room, step) => {
  const values = [
    ...drawn({ 3: 1, 4: 4, 5: 9, 6: 8, 7: 2 }, step),
    ...drawn({ 7: 13, 8: 11 }, step, 'b'),
  ]
  const places = dotPlaces(values, room, step)
  expect(leastDistance(values, places)).toBeGreaterThanOrEqual(2 * places.radiusPixels)
  expect(Math.max(...places.offsets.map(({ across }) => Math.abs(across)))).toBeLessThanOrEqual(
    room / 2,
  )
})

test('equal values are centred: one in the middle, two beside it', () => {
  const { offsets } = dotPlaces(drawn({ 5: 1, 6: 2 }, 30), 60, 30)
  const [one, left, right] = offsets
  expect(one).toEqual({ across: 0, up: 0 })
  expect(left?.across).toBeCloseTo(-(right?.across ?? 0))
})

test('measured values that nearly coincide move aside and keep their height', () => {
  const values = [100, 101, 103, 104.5, 130].map((heightPixels) => ({ levelId: 'a', heightPixels }))
  const places = dotPlaces(values, 60, 30)
  expect(places.offsets.every(({ up }) => up === 0)).toBe(true)
  expect(leastDistance(values, places)).toBeGreaterThanOrEqual(2 * places.radiusPixels)
})

test('a thousand scores of one level stay in its room', () => {
  const { offsets } = dotPlaces(drawn({ 6: 1000 }, 30), 60, 30)
  expect(offsets).toHaveLength(1000)
  expect(Math.max(...offsets.map(({ across }) => Math.abs(across)))).toBeLessThanOrEqual(30)
})
