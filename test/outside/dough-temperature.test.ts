import { expect, test } from 'vitest'
import { cardinalRate, yeastCardinals } from '@/core/dough-temperature/cardinal-temperature.ts'
import { doughCelsius } from '@/core/dough-temperature/heat-balance.ts'
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

const still = { flourCelsius: 22, roomCelsius: 22, roomHeat: 0 }

test.each([
  [55, 19.73],
  [60, 19.64],
  [65, 19.57],
  [70, 19.5],
  [80, 19.37],
])(
  'energy balance at %d %% without room, wetting and work (computed table: flour 1.75 at 22 °C, water 4.186 at 18 °C)',
  (hydration, celsius) => {
    const bodies = { ...mixBodies(flourAndWater(hydration), still), wettingKilojoules: 0 }
    expect(doughCelsius(bodies, 18, 0)).toBeCloseTo(celsius, 2)
  },
)

test('one watt-hour per kg of flour (3.6 kJ) warms a 65 % dough by 0.81 °C where nothing goes to the room', () => {
  const bodies = mixBodies(flourAndWater(65), still)
  const unmixed = doughCelsius(bodies, 18, 0) ?? 0
  expect((doughCelsius(bodies, 18, 3.6) ?? 0) - unmixed).toBeCloseTo(0.81, 2)
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
