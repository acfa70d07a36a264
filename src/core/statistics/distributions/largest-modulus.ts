import { dunnettUpper } from './dunnett.ts'

/**
 * Chance that the larger of two independent t values over one estimated spread reaches t in size (the studentized maximum
 * modulus of two): the p of looking at a line and a bend at once and taking the clearer.
 *
 * @example largerOfTwoP(3.382, 4) // 0.050 (maximum modulus of two at 4 degrees of freedom, integrated for this project)
 */
export function largerOfTwoP(t: number, df: number): number {
  return dunnettUpper(t, [0, 0], df)
}
