import { expect, test } from 'vitest'
import { panSquareCentimetres, tinMillilitres } from '@/core/house/pan-geometry.ts'

test('a straight tin is length × width × height, a straight round one π r² h', () => {
  // 30 × 10 × 8 = 2400; π · 9² · 7 = 567 π = 1781.283…
  const box = { topLength: 30, topWidth: 10, bottomLength: 30, bottomWidth: 10, height: 8 }
  expect(tinMillilitres({ is: 'box', ...box })).toBeCloseTo(2400, 9)
  const round = { topDiameter: 18, bottomDiameter: 18, height: 7 }
  expect(tinMillilitres({ is: 'round', ...round })).toBeCloseTo(567 * Math.PI, 9)
})

test('a sloping tin by hand', () => {
  // Sides 10 and 8 square, 6 high: a frustum, h/3 (A + B + √(AB)) = 2 · (100 + 64 + 80) = 488.
  const box = { topLength: 10, topWidth: 10, bottomLength: 8, bottomWidth: 8, height: 6 }
  expect(tinMillilitres({ is: 'box', ...box })).toBeCloseTo(488, 9)
  // A cone frustum, radii 10 and 8, 6 high: π h/3 (R² + Rr + r²) = 2π (100 + 80 + 64) = 488 π.
  const round = { topDiameter: 20, bottomDiameter: 16, height: 6 }
  expect(tinMillilitres({ is: 'round', ...round })).toBeCloseTo(488 * Math.PI, 9)
})

test('pans by their floor', () => {
  expect(panSquareCentimetres({ is: 'rectangle', length: 40, width: 30 })).toBe(1200)
  expect(panSquareCentimetres({ is: 'circle', diameter: 28 })).toBeCloseTo(196 * Math.PI, 9)
})
