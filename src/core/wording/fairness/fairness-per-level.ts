import type { FairnessCode } from '@/core/fairness/fairness-data.ts'
import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { massText } from '@/core/units/mass-text.ts'
import { decimalText, withUnit } from '@/core/units/number-text.ts'
import { degreesWithSign, plainDegrees } from '@/core/units/temperature-text.ts'
import { minutesText } from '@/core/wording/words/duration-text.ts'
import { levelNamed } from '@/core/wording/words/named-in-plan.ts'

interface Written {
  what: string
  unit: string
  decimals: number
}

const written: Partial<Record<FairnessCode, Written>> = {
  'water-temperature': { what: 'dough with one water for all', unit: '°C', decimals: 1 },
  'piece-mass': { what: 'mass', unit: 'g', decimals: 0 },
  'flour-per-piece': { what: 'flour', unit: 'g', decimals: 1 },
  'salt-in-water': { what: 'salt, of the water', unit: '%', decimals: 2 },
  'yeast-in-water': { what: 'yeast, of the water', unit: '%', decimals: 2 },
  'water-rides': { what: 'water from everything', unit: '%', decimals: 1 },
  'steps-differ': { what: 'from mix to oven', unit: 'min', decimals: 0 },
  'dough-order': { what: 'mean position', unit: '', decimals: 1 },
  'bake-order': { what: 'mean position', unit: '', decimals: 1 },
  'mouth-order': { what: 'mean position', unit: '', decimals: 1 },
  load: { what: 'mean load', unit: '', decimals: 1 },
  'oven-place': { what: 'mean place', unit: '', decimals: 1 },
  'age-at-baking': { what: 'wait for the oven', unit: 'min', decimals: 0 },
  'oven-to-mouth': { what: 'oven to mouth', unit: 'min', decimals: 1 },
  'age-at-tasting': { what: 'age when tasted', unit: 'min', decimals: 0 },
  'bench-flour': { what: '5 g of bench flour moves it by', unit: '', decimals: 2 },
  'ferment-hours': { what: 'at 24 °C', unit: 'h', decimals: 2 },
  'dough-warmth': { what: 'dough', unit: '°C', decimals: 1 },
  'piece-warmth': { what: 'piece', unit: '°C', decimals: 1 },
  'levels-handled': { what: 'as handled', unit: '', decimals: 1 },
  'age-baked': { what: 'from mix to oven', unit: 'min', decimals: 0 },
  'mouth-minutes': { what: 'oven to mouth', unit: 'min', decimals: 1 },
  'age-tasted': { what: 'age when tasted', unit: 'min', decimals: 0 },
  'oven-floor': { what: 'floor', unit: '°C', decimals: 0 },
  'failures-by-level': { what: 'failed', unit: '%', decimals: 0 },
  'folds-done': { what: 'times', unit: '', decimals: 1 },
}

/** What an item found at each level, named and with its unit, in the plan's order; null for items that are not about levels. */
export function fairnessPerLevel(
  item: FairnessItem,
  plan: Plan,
): { what: string; rows: { levelId: string; level: string; text: string }[] } | null {
  const how = written[item.code]
  if (!item.perLevel || !how) return null
  const place = new Map(plan.levels.map(({ id }, index) => [id, index]))
  const inOrder = item.perLevel.toSorted(
    (a, b) => (place.get(a.levelId) ?? 0) - (place.get(b.levelId) ?? 0),
  )
  const rows = inOrder.map(({ levelId, value }) => ({
    levelId,
    level: levelNamed(plan, levelId),
    text: valueText(value, how),
  }))
  return { what: whatOf(item, how), rows }
}

/** What the values are, its own figures in the person's units. */
function whatOf(item: FairnessItem, { what }: Written): string {
  if (isUnwatered(item)) return 'dough'
  if (item.code === 'ferment-hours') return `at ${plainDegrees(24)}`
  return item.code === 'bench-flour' ? `${massText(5, 0)} of bench flour moves it by` : what
}

/** A value as it is found (metric), in the person's unit. */
function valueText(value: number, { unit, decimals }: Written): string {
  if (unit === 'g') return massText(value, decimals)
  if (unit === '°C') return degreesWithSign(value, decimals)
  if (unit === 'min') return minutesText(value, decimals)
  return withUnit(decimalText(value, decimals), unit)
}

function isUnwatered({ code, data }: FairnessItem): boolean {
  return code === 'water-temperature' && ['no-water', 'some-water'].includes(data.state)
}
