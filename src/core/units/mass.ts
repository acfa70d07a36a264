/**
 * Grams in one of each unit. Ounce and pound are the international avoirdupois ones, exact since 1959
 * (1 lb = 0.45359237 kg). Millilitre and litre stand for water, at the kitchen's convention of 1 g/mL
 * (0.998 at 20 °C: 2 g short in a litre).
 */
const gramsIn = {
  g: 1,
  kg: 1000,
  oz: 28.349523125,
  lb: 453.59237,
  ml: 1,
  l: 1000,
} as const

export type MassUnit = keyof typeof gramsIn

/** An amount written in a unit, in grams. */
export function gramsFrom(amount: number, unit: MassUnit): number {
  return amount * gramsIn[unit]
}
