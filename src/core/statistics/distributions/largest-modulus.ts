import { dunnettUpper } from './dunnett.ts'

/**
 * Chance that the larger of two independent t values over one estimated spread reaches t in size (the studentized maximum
 * modulus of two): the p of looking at a line and a bend at once and taking the clearer.
 */
export function largerOfTwoP(t: number, df: number): number {
  return dunnettUpper(t, [0, 0], df)
}
