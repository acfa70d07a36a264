import { coldestWaterCelsius, type WaterPlan } from '@/core/dough-temperature/water-plan.ts'
import { massUnit } from '@/core/units/mass-text.ts'
import { decimalText } from '@/core/units/number-text.ts'
import type { DegreeWords } from './water-text.ts'

/** A line of water temperatures or of grams that go with them: one text a batch. */
export interface WaterLine {
  key: string
  head: string
  cells: string[]
}

/**
 * The water of each batch, or one for all; the ice in grams where a batch needs some; for active dry yeast its own warm water
 * and what the rest is to be. A dash stands where no water is cold enough: what would have to be below freezing is never
 * written as something to pour.
 */
export function waterLines(
  water: WaterPlan,
  matched: boolean,
  { sign, degrees }: DegreeWords,
  head: string,
): WaterLine[] {
  const written = (celsius: number | null | undefined) =>
    celsius === null || celsius === undefined || celsius < coldestWaterCelsius
      ? '–'
      : degrees(celsius, 1)
  const { batches, oneWaterCelsius } = water
  if (!matched)
    return [{ key: 'water-celsius', head, cells: batches.map(() => written(oneWaterCelsius)) }]
  const cells = batches.map(({ waterCelsius }) => written(waterCelsius))
  const ice = batches.map((each) => (each.ice?.ok ? decimalText(each.ice.grams, 0) : ''))
  const [bloom] = batches.flatMap((each) => each.bloom ?? [])
  return [
    { key: 'water-celsius', head, cells },
    ...(ice.some((text) => text !== '')
      ? [{ key: 'ice', head: `Ice in place of water, ${massUnit()}`, cells: ice }]
      : []),
    ...(bloom
      ? [
          {
            key: 'bloom',
            head: `Of it for the yeast at ${degrees(bloom.leastCelsius, 0)} to ${degrees(bloom.mostCelsius, 0)} ${sign}, ${massUnit()}`,
            cells: batches.map((each) => (each.bloom ? decimalText(each.bloom.grams, 0) : '')),
          },
          {
            key: 'rest-celsius',
            head: `The rest of it at, ${sign}`,
            cells: batches.map((each) => (each.bloom ? written(each.bloom.restCelsius) : '')),
          },
        ]
      : []),
  ]
}
