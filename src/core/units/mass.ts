/**
 * Grams in one of each unit. Ounce and pound are the international avoirdupois ones, exact since 1959
 * (1 lb = 0.45359237 kg). Millilitre to litre stand for water, at the kitchen's convention of 1 g/mL
 * (0.998 at 20 °C: 2 g short in a litre). A hectogram is the Italian kitchen's etto.
 */
const gramsIn = {
  g: 1,
  hg: 100,
  kg: 1000,
  oz: 28.349523125,
  lb: 453.59237,
  ml: 1,
  cl: 10,
  dl: 100,
  l: 1000,
} as const

export type MassUnit = keyof typeof gramsIn

/** An amount written in a unit, in grams. */
export function gramsFrom(amount: number, unit: MassUnit): number {
  return amount * gramsIn[unit]
}
