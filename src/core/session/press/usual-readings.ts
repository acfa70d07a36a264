import { most } from '@/core/record/most.ts'
import type { EventOf } from '@/core/session/event-record.ts'

export type TemperatureOf = EventOf<'temperature'>['of']

/** The lowest and the highest of something, in its own unit. */
export interface Ends {
  least: number
  most: number
}

/** Flour comes from a freezer at the coldest, and no dough that is to rise is as hot as 70 °C: a lost decimal sign shows. */
const cold: Ends = { least: -40, most: 70 }

const possible: Partial<Record<TemperatureOf, Ends>> = {
  dough: { least: -10, most: 70 },
  preferment: { least: -10, most: 70 },
  flour: cold,
  fridge: cold,
  room: cold,
  water: { least: 0, most: 100 },
}

/** The ends (°C) outside of which a temperature cannot be, by what was measured; the oven's and the loaf's are wide. */
export function possibleCelsius(of: TemperatureOf): Ends {
  return possible[of] ?? { least: -80, most: 700 }
}

/**
 * What a kitchen usually reads (°C): yeast works from just above freezing to about 45 °C, a fridge keeps 1 to 8 °C, bread is
 * baked at floors of 150 to 480 °C and is done at a core of 85 to 100 °C; it is served between room and oven warm. Ranges of
 * practice, from memory; outside of them a reading may be right, so it is asked for, not refused.
 */
const usual: Record<TemperatureOf, Ends> = {
  dough: { least: 2, most: 38 },
  piece: { least: 2, most: 38 },
  preferment: { least: 2, most: 38 },
  flour: { least: -20, most: 38 },
  water: { least: 0, most: 60 },
  room: { least: 5, most: 42 },
  fridge: { least: -1, most: 12 },
  'oven-floor': { least: 120, most: 520 },
  core: { least: 70, most: 101 },
  serving: { least: 10, most: 95 },
}

/** The range in which a temperature (°C) usually lies; one outside asks before it is kept. */
export function usualCelsius(of: TemperatureOf): Ends {
  return usual[of]
}

/** What a scale, a ruler and a marked tub can show: grams; mm or mL; folds of one go; percent over the volume after mixing. */
export const possibleGrams: Ends = { least: 0, most: 1_000_000 }
export const possibleSize: Ends = { least: 0, most: 1_000_000 }
export const possibleFolds: Ends = { least: 1, most: most.repeats }
export const possibleRise: Ends = { least: -100, most: 2000 }
/** The width of a view as it is kept, mm, of one typed in cm: rounded to a thousandth, without the dust of binary figures. */
export const viewMillimetres = (centimetres: number) => Number((centimetres * 10).toFixed(3))

/** What a picture of dough or bread can show from edge to edge: from a few pores to a whole table. */
export const possibleViewCentimetres: Ends = { least: 0.1, most: 1000 }

/** Whether a value lies outside of two ends. */
export const isOutside = (value: number, { least, most }: Ends): boolean =>
  value < least || value > most
