/**
 * How often a trial that was to end after so many sessions, and then was looked at after each one more up to so many, calls
 * a difference without cause when each look is judged at 5 %: simulated for this project with four levels (100,000s of trials; three
 * and five levels differ by at most .004).
 */
const addedRates: Readonly<Record<number, readonly number[]>> = {
  2: [0.084, 0.107, 0.126, 0.141, 0.154, 0.165],
  3: [0.077, 0.097, 0.112, 0.126, 0.137],
  4: [0.073, 0.09, 0.105, 0.117],
  5: [0.07, 0.086, 0.098],
  6: [0.068, 0.083],
}

/** The true rate of a difference without cause when a trial that was to end after `most` sessions is read after each one more up to `done`. */
export function addedRate(most: number, done: number): number {
  const rates = addedRates[Math.min(6, Math.max(2, most))] as readonly number[]
  return rates[Math.min(rates.length, done - most) - 1] as number
}
