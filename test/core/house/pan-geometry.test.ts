import { describe, expect, test } from 'vitest'
import { panInForm, tinInForm } from '@/core/house/in-another-form.ts'
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

test('a tin or pan of any other form is taken as measured', () => {
  expect(tinMillilitres({ is: 'volume', millilitres: 1750 })).toBe(1750)
  expect(panSquareCentimetres({ is: 'area', squareCentimetres: 905 })).toBe(905)
})

// By hand: 40 × 30 cm = 1200 cm², a circle of 2 √(1200/π) = 39.09 cm; 2400 ml at 8 cm is a floor of 300 cm², 19.54 cm across.
describe('the same size in another form', () => {
  test('a pan keeps its floor', () => {
    const pan = { is: 'rectangle', length: 40, width: 30 } as const
    expect(panInForm('area', pan)).toEqual({ is: 'area', squareCentimetres: 1200 })
    expect(panInForm('circle', pan)).toEqual({ is: 'circle', diameter: 39.1 })
    // √(1200 · 3/4) = 30.
    const area = { is: 'area', squareCentimetres: 1200 } as const
    expect(panInForm('rectangle', area)).toEqual({ is: 'rectangle', length: 40, width: 30 })
    expect(panInForm('rectangle', pan)).toBe(pan)
  })

  test('a tin holds as much', () => {
    const box = {
      ...({ is: 'box', topLength: 30, topWidth: 10 } as const),
      ...{ bottomLength: 30, bottomWidth: 10, height: 8 },
    }
    expect(tinInForm('volume', box)).toEqual({ is: 'volume', millilitres: 2400 })
    const round = tinInForm('round', box)
    expect(round).toEqual({ is: 'round', topDiameter: 19.5, bottomDiameter: 19.5, height: 8 })
    for (const is of ['box', 'round', 'volume'] as const)
      for (const from of [box, round, { is: 'volume', millilitres: 2400 } as const])
        expect(tinMillilitres(tinInForm(is, from)) / 2400).toBeCloseTo(1, 1)
  })
})
