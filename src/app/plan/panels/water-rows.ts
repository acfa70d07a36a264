import { degreesText, type TemperatureUnit } from '@/app/kit/field/temperature-words.ts'
import { coldestWaterCelsius, type WaterPlan } from '@/core/dough-temperature/water-plan.ts'
import { decimalText } from '@/core/units/number-text.ts'
import type { WrittenRow } from './weigh-sheet-rows.ts'

/**
 * The water of each batch in the person's unit, or one for all, and the ice in grams where a batch needs some. A dash stands
 * where no water is cold enough: what would have to be below 0 °C is never written as something to pour.
 */
export function waterRows(
  water: WaterPlan,
  matched: boolean,
  unit: TemperatureUnit,
  head = 'Water',
): WrittenRow[] {
  const written = (celsius: number) =>
    celsius < coldestWaterCelsius ? '–' : degreesText(celsius, unit, 1)
  const { batches, oneWaterCelsius } = water
  if (!matched) {
    const cells = batches.map(() => written(oneWaterCelsius))
    return [{ key: 'water-celsius', head, cells, quiet: false }]
  }
  const cells = batches.map(({ waterCelsius }) => written(waterCelsius))
  const ice = batches.map((each) => (each.ice?.ok ? decimalText(each.ice.grams, 0) : ''))
  return [
    { key: 'water-celsius', head, cells, quiet: false },
    ...(ice.some((text) => text !== '')
      ? [{ key: 'ice', head: 'Ice in place of water, g', cells: ice, quiet: false }]
      : []),
  ]
}
