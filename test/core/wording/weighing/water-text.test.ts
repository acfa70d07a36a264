import { expect, test } from 'vitest'
import type { WaterPlan } from '@/core/dough-temperature/water-plan.ts'
import { spreadWords } from '@/core/wording/weighing/water-text.ts'

const words = {
  sign: '°C',
  degrees: (celsius: number, decimals: number) => celsius.toFixed(decimals),
  steps: (celsius: number, decimals: number) => celsius.toFixed(decimals),
}
const water = (spreadCelsius: number) => ({ spreadCelsius, spreadMinutes: 2 }) as WaterPlan
const probe = { id: 'p', kind: 'thermometer' as const, name: 'The probe', spreadCelsius: 0.5 }

test('a spread that the thermometer cannot tell is said to be one', () => {
  expect(spreadWords(water(0.3), true, words, probe)).toBe(
    'With one water for all, the doughs would leave the mixer 0.3 °C apart, about 2 min of proof; The probe, good to ±0.5 °C, cannot tell that.',
  )
  expect(spreadWords(water(1.1), false, words, probe)).toBe(
    'With this one water, the doughs leave the mixer 1.1 °C apart, about 2 min of proof.',
  )
  expect(spreadWords(water(0.3), true, words)).not.toContain('cannot')
})
