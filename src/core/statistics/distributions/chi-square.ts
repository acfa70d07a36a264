import gammainc from '@stdlib/math-base-special-gammainc'
import type { Tails } from './tails.ts'

/** Both tails of chi-square, by the regularized incomplete gamma function at df/2 and x/2. */
export function chiSquareTails(x: number, df: number): Tails {
  if (x <= 0) return { lower: 0, upper: 1 }
  return {
    lower: gammainc(x / 2, df / 2, true, false),
    upper: gammainc(x / 2, df / 2, true, true),
  }
}
