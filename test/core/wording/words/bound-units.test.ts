import { expect, test } from 'vitest'
import { boundUnits } from '@/core/wording/words/bound-units.ts'

test.each([
  ['about 12.5 g of salt', 'about 12.5\u00a0g of salt'],
  ['64 to 70 % of flour', '64 to 70\u00a0% of flour'],
  ['at 24 °C for 40 min', 'at 24\u00a0°C for 40\u00a0min'],
  ['2 h 30 min', '2\u00a0h 30\u00a0min'],
  ['3 tasters, 4 levels', '3 tasters, 4 levels'],
  ['64 stands, 8 good ones', '64 stands, 8 good ones'],
])('%s', (text, bound) => {
  expect(boundUnits(text)).toBe(bound)
})
