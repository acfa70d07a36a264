import { degreeWords, type TemperatureUnit } from '@/app/kit/field/temperature-words.ts'
import type { WaterPlan } from '@/core/dough-temperature/water-plan.ts'
import type { WrittenRow } from '@/core/weighing/written-sheet.ts'
import { waterLines } from '@/core/wording/weighing/water-lines.ts'

/** The water of each batch in the person's unit, as lines of the weigh sheet. */
export function waterRows(
  water: WaterPlan,
  matched: boolean,
  unit: TemperatureUnit,
  head = 'Water',
): WrittenRow[] {
  return waterLines(water, matched, degreeWords(unit), head).map((line) => ({
    ...line,
    quiet: false,
  }))
}
