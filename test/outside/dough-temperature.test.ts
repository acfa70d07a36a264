import { expect, test } from 'vitest'
import { cardinalRate, yeastCardinals } from '@/core/dough-temperature/cardinal-temperature.ts'
import { doughCelsius, waterCelsius } from '@/core/dough-temperature/heat-balance.ts'
import { mixBodies } from '@/core/dough-temperature/heat-part.ts'
import { iceShare } from '@/core/dough-temperature/ice-share.ts'
import { frictionFromMeasured, simpleRuleWater } from '@/core/dough-temperature/simple-rule.ts'
import type { Formula } from '@/core/formula/formula-record.ts'
import { celsiusDifferenceFromFahrenheit, celsiusFromFahrenheit } from '@/core/units/temperature.ts'

test.each([
  ['Pizza Today, June 2018 (seen)', 80, [65, 75], 35, 65],
  ['San Francisco Baking Institute handout (seen)', 75, [65, 65], 8, 87],
  ['a how-to page quoted in a forum, friction 2 °F × 8 min (seen)', 78, [60, 70], 16, 88],
])('simple rule: %s', (_, wanted, others, friction, water) => {
  expect(simpleRuleWater(wanted, others, friction)).toBe(water)
  expect(frictionFromMeasured(wanted, [...others, water])).toBe(friction)
  const metric = simpleRuleWater(
    celsiusFromFahrenheit(wanted),
    others.map(celsiusFromFahrenheit),
    celsiusDifferenceFromFahrenheit(friction),
  )
  expect(metric).toBeCloseTo(celsiusFromFahrenheit(water), 10)
})

const flourAndWater = (hydration: number): Formula => ({
  ingredients: [
    { id: 'flour', name: 'flour', kind: 'flour', percent: 100 },
    { id: 'water', name: 'water', kind: 'water', percent: hydration },
  ],
  preferments: [],
  batchSize: { by: 'flour', flourGrams: 1000 },
})

test.each([
  [55, 23.45, 19.73, 18.96],
  [60, 23.19, 19.64, 19.38],
  [65, 22.94, 19.57, 19.74],
  [70, 22.72, 19.5, 20.04],
  [80, 22.33, 19.37, 20.54],
])(
  'energy balance at %d %% (computed table: flour 1.75 at 22 °C, water 4.186 at 18 °C, wetting 15.1 kJ/kg, no work)',
  (hydration, withWetting, without, needed) => {
    const bodies = mixBodies(flourAndWater(hydration), { flourCelsius: 22, roomCelsius: 22 })
    expect(doughCelsius(bodies, 18, 0)).toBeCloseTo(withWetting, 2)
    expect(doughCelsius(bodies, 18, 0, 0)).toBeCloseTo(without, 2)
    expect(waterCelsius(bodies, 24, 0)).toBeCloseTo(needed, 2)
  },
)

test('one watt-hour per kg of flour (3.6 kJ) warms a 65 % dough by 0.81 °C; wetting alone by 3.4 °C', () => {
  const bodies = mixBodies(flourAndWater(65), { flourCelsius: 22, roomCelsius: 22 })
  const still = doughCelsius(bodies, 18, 0) ?? 0
  expect((doughCelsius(bodies, 18, 3.6) ?? 0) - still).toBeCloseTo(0.81, 2)
  expect(still - (doughCelsius(bodies, 18, 0, 0) ?? 0)).toBeCloseTo(3.4, 1)
})

test('baguette with poolish: only the final dough’s 900 g of flour is dry and gives wetting heat, worked by hand', () => {
  // 1,368 flour, 936 water, 468 + 468 of them in the poolish; salt and yeast left out
  const formula: Formula = {
    ingredients: [
      { id: 'flour', name: 'flour', kind: 'flour', percent: 100 },
      { id: 'water', name: 'water', kind: 'water', percent: (936 / 1368) * 100 },
    ],
    preferments: [
      {
        id: 'poolish',
        name: 'poolish',
        kind: 'poolish',
        flourSharePercent: (468 / 1368) * 100,
        parts: [
          { ingredientId: 'flour', percent: 100 },
          { ingredientId: 'water', percent: 100 },
        ],
        celsius: 20,
      },
    ],
    batchSize: { by: 'flour', flourGrams: 1368 },
  }
  const bodies = mixBodies(formula, { flourCelsius: 22, roomCelsius: 22 })
  // flour 0.9 × 1.75 = 1.575; poolish 0.468 × 1.75 + 0.468 × 4.186 = 2.778048; water 0.468 × 4.186 = 1.959048 kJ/K
  // stored 1.575 × 22 + 2.778048 × 20 = 90.21096; wetting 0.9 × 15.1 = 13.59; all 6.312096
  // water for 24 °C: (24 × 6.312096 − 90.21096 − 13.59)/1.959048 = 47.689344/1.959048 = 24.3431
  expect(bodies.dryFlourGrams).toBeCloseTo(900, 9)
  expect(waterCelsius(bodies, 24, 0)).toBeCloseTo(24.3431, 3)
  // had all 1,368 g given heat, 7.0668 kJ more: 20.736 °C
  const wrong = waterCelsius({ ...bodies, dryFlourGrams: 1368 }, 24, 0)
  expect(wrong).toBeCloseTo(20.7358, 3)
})

test.each([
  [60, 40, 0.115, 0.1163],
  [70, 50, 0.109, 0.1099],
  [40, 0, 0.26, 0.2632],
])(
  'ice from %d to %d °F: published table %d, closed balance %d (seen: koerner-co.com)',
  (tap, wanted, table, balance) => {
    const ice = iceShare(celsiusFromFahrenheit(tap), celsiusFromFahrenheit(wanted))
    if (!ice.ok) throw new Error(ice.reason)
    expect(Math.abs(ice.share - balance)).toBeLessThan(0.0007)
    expect(Math.abs(ice.share - table)).toBeLessThan(0.004)
  },
)

test('40 kg from 20 to 10 °C takes 4.00 kg of ice in place of tap water (computed, closed balance)', () => {
  const ice = iceShare(20, 10)
  if (!ice.ok) throw new Error(ice.reason)
  expect(40 * ice.share).toBeCloseTo(4, 1)
})

test('freezer ice at −18 °C: each kg takes 2.1 × 18 + 334 + 4.186 × 20 = 455.5 kJ to reach 20 °C (seen: 455.7)', () => {
  const ice = iceShare(25, 20, -18)
  if (!ice.ok) throw new Error(ice.reason)
  // replaced, not added: m × 455.52 = (30 − m) × 4.186 × 5
  const kilograms = 30 * ice.share
  expect(kilograms * (2.1 * 18 + 334 + 4.186 * 20)).toBeCloseTo((30 - kilograms) * 4.186 * 5, 8)
})

const table = [
  [2.8, [0.004, 0.014, 0.135, 0.346, 0.495, 0.596, 0.788, 0.869, 0.935, 0.98, 1, 0.968, 0.845]],
  [1.3, [0.018, 0.033, 0.168, 0.376, 0.519, 0.616, 0.798, 0.875, 0.938, 0.981, 1, 0.969, 0.849]],
  [4.3, [0, 0.002, 0.101, 0.312, 0.468, 0.575, 0.777, 0.863, 0.932, 0.979, 1, 0.967, 0.842]],
] as const

test.each(table)(
  'cardinal temperature table, minimum %d °C (optimum 32.3, maximum 45.4: Salvado et al. 2011)',
  (minCelsius, rates) => {
    const temperatures = [4, 5, 10, 15, 18, 20, 24, 26, 28, 30, 32.3, 35, 38]
    for (const [index, celsius] of temperatures.entries()) {
      const rate = cardinalRate(celsius, { ...yeastCardinals, minCelsius })
      expect(Math.abs(rate - (rates[index] ?? Number.NaN))).toBeLessThanOrEqual(0.00051)
    }
  },
)

test('20 to 30 °C speeds the model up 1.64 times', () => {
  expect(cardinalRate(30) / cardinalRate(20)).toBeCloseTo(1.64, 2)
})
