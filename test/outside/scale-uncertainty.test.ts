import { expect, test } from 'vitest'
import {
  taredUncertaintyGrams,
  untaredUncertaintyGrams,
} from '@/core/kitchen/reading-uncertainty.ts'
import { achievedLevel } from '@/core/weighing/achieved-level.ts'
import { leastWeighableGrams } from '@/core/weighing/weigh.ts'

const twoDigits = (value: number) => Number(value.toPrecision(2))

test('resolution d is rectangular: d/√12 = 0.289 d; a tared net reading d/√6 = 0.408 d (GUM, JCGM 100:2008, 4.3.7, F.2.2.1)', () => {
  expect(untaredUncertaintyGrams(1)).toBeCloseTo(0.289, 3)
  expect(taredUncertaintyGrams(1)).toBeCloseTo(0.408, 3)
})

test('printed relative uncertainties of single readings: 3 g on 1 g, 0.3 g on 0.1 g 9.6 %; a tenth of that on a finer scale', () => {
  expect(twoDigits((100 * untaredUncertaintyGrams(1)) / 3)).toBe(9.6)
  expect(twoDigits((100 * untaredUncertaintyGrams(0.1)) / 3)).toBe(0.96)
  expect(twoDigits((100 * untaredUncertaintyGrams(0.1)) / 0.3)).toBe(9.6)
  expect(twoDigits((100 * untaredUncertaintyGrams(0.01)) / 0.3)).toBe(0.96)
  // stock of 1.0 g or 5 g on a 0.1 g scale
  expect(twoDigits((100 * untaredUncertaintyGrams(0.1)) / 1)).toBe(2.9)
  expect(twoDigits((100 * untaredUncertaintyGrams(0.1)) / 5)).toBe(0.58)
})

test('650 g water in 1,000 g flour on a 1 g scale: 0.034 points of hydration, by the ratio rule (GUM 5.1.6)', () => {
  const u = untaredUncertaintyGrams(1)
  const level = achievedLevel([
    { grams: 650, uncertaintyGrams: u, above: 1, below: 0 },
    { grams: 1000, uncertaintyGrams: u, above: 0, below: 1 },
  ])
  expect(level?.value).toBe(65)
  // h √((u/W)² + (u/F)²)
  expect(level?.uncertainty).toBeCloseTo(65 * Math.hypot(u / 650, u / 1000), 12)
  expect(twoDigits(level?.uncertainty ?? 0)).toBe(0.034)
})

test('the smallest dose with 1 % is 29 d untared (OIML practice), so √2 times that, 41 d, tared', () => {
  const scale = {
    id: 's',
    kind: 'scale' as const,
    name: 's',
    resolutionGrams: 0.1,
    capacityGrams: 500,
  }
  expect(untaredUncertaintyGrams(1) / 0.01).toBeCloseTo(29, 0)
  expect(leastWeighableGrams([scale], 0.01)).toBeCloseTo(4.08, 2)
  expect(leastWeighableGrams([{ ...scale, capacityGrams: 4 }], 0.01)).toBeNull()
})
