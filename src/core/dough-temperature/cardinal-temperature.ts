export interface CardinalTemperatures {
  minCelsius: number
  optCelsius: number
  maxCelsius: number
}

/**
 * Baker's yeast: optimum 32.3 and maximum 45.4 °C seen (Salvado et al. 2011); the minimum of this species was not seen, 2.8
 * is the midpoint of its genus (1.3 to 4.3): an assumption that decides everything below about 10 °C.
 */
export const yeastCardinals: CardinalTemperatures = {
  minCelsius: 2.8,
  optCelsius: 32.3,
  maxCelsius: 45.4,
}

/** Rates are told against 24 °C. */
const referenceCelsius = 24

/**
 * Growth rate relative to the optimum by the cardinal temperature model with inflection (Rosso, Lobry & Flandrois 1993, from
 * memory; formula seen): 0 outside (min, max), 1 at the optimum. A model of growth, not of gas.
 */
export function cardinalRate(
  celsius: number,
  cardinals: CardinalTemperatures = yeastCardinals,
): number {
  const { minCelsius: min, optCelsius: opt, maxCelsius: max } = cardinals
  if (celsius <= min || celsius >= max) return 0
  const numerator = (celsius - max) * (celsius - min) ** 2
  const slope = (opt - min) * (celsius - opt) - (opt - max) * (opt + min - 2 * celsius)
  return numerator / ((opt - min) * slope)
}

/** Rate against that at 24 °C: 1 at 24 °C, about 1.2 at 28 °C. */
export function rateAgainstReference(celsius: number): number {
  return cardinalRate(celsius) / cardinalRate(referenceCelsius)
}
