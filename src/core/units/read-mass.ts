import { gramsFrom, type MassUnit } from './mass.ts'
import { type NumberBounds, type NumberTrouble, readNumber } from './read-number.ts'

/** Spellings of each unit that a person may put behind an amount, in lower case. */
export const massSpellings: Readonly<Record<string, MassUnit>> = {
  g: 'g',
  gr: 'g',
  gram: 'g',
  grams: 'g',
  kg: 'kg',
  kilo: 'kg',
  kilos: 'kg',
  kilogram: 'kg',
  kilograms: 'kg',
  oz: 'oz',
  'oz.': 'oz',
  ounce: 'oz',
  ounces: 'oz',
  lb: 'lb',
  'lb.': 'lb',
  lbs: 'lb',
  'lbs.': 'lb',
  pound: 'lb',
  pounds: 'lb',
  ml: 'ml',
  milliliter: 'ml',
  millilitre: 'ml',
  milliliters: 'ml',
  millilitres: 'ml',
  l: 'l',
  liter: 'l',
  litre: 'l',
  liters: 'l',
  litres: 'l',
}

export type ReadMass = { ok: true; grams: number; unit: MassUnit } | NumberTrouble

/**
 * A mass as typed, in grams; `unitWhenNone` is meant where no unit stands. Bounds are in grams: 0 to a tonne unless
 * narrowed. Refuses as `readNumber` does, and a unit that is no mass (nor millilitre or litre of water) by its name.
 */
export function readMass(
  text: string,
  unitWhenNone: MassUnit = 'g',
  { least = 0, most = 1e6 }: Pick<NumberBounds, 'least' | 'most'> = {},
): ReadMass {
  const read = readNumber(text, { units: Object.keys(massSpellings) })
  if (!read.ok) return read
  const unit = read.unit === null ? unitWhenNone : (massSpellings[read.unit] ?? unitWhenNone)
  const grams = gramsFrom(read.value, unit)
  if (grams < least) return { ok: false, reason: 'too-small', least }
  if (grams > most) return { ok: false, reason: 'too-large', most }
  return { ok: true, grams, unit }
}
