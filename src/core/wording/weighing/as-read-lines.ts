import type { WaterPlan } from '@/core/dough-temperature/water-plan.ts'
import { massUnit } from '@/core/units/mass-text.ts'
import { type WaterLine, waterLines } from './water-lines.ts'
import type { DegreeWords } from './water-text.ts'

/** A line of a printed weigh sheet that somebody fills in: what is planned, an empty text where nothing is, and its blanks. */
export interface AsReadLine extends WaterLine {
  blanks: 1 | 2
}

/**
 * What is read of each dough as it is mixed: the water and what goes with it, the dough as it leaves the mixer, what was
 * worked in by hand. Without a water plan (null) nothing is planned, and the blanks stand all the same.
 */
export function asReadLines(
  water: WaterPlan | null,
  matched: boolean,
  degrees: DegreeWords,
  doughs: number,
): AsReadLine[] {
  const empty = Array.from({ length: doughs }, () => '')
  const waterHead = `Water at, ${degrees.sign}`
  const planned = water
    ? waterLines(water, matched, degrees, waterHead)
    : [{ key: 'water-celsius', head: waterHead, cells: empty }]
  const leaves = water?.batches.map(({ oneWaterDoughCelsius }) =>
    degrees.degrees(matched ? water.wantedDoughCelsius : oneWaterDoughCelsius, 1),
  )
  return [
    ...planned.map((line) => ({ ...line, blanks: 1 as const })),
    {
      ...{ key: 'dough-celsius', head: `Dough from the mixer, ${degrees.sign}` },
      ...{ cells: leaves ?? empty, blanks: 1 },
    },
    {
      ...{ key: 'worked-in', head: `Worked in: flour, water, ${massUnit()}` },
      ...{ cells: empty, blanks: 2 },
    },
  ]
}
