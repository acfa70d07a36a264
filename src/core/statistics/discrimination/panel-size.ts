import { binomialAtLeast, binomialQuantile } from '@/core/statistics/distributions/binomial.ts'
import { type Answer, refuse } from '@/core/statistics/reason.ts'
import type { Sides } from './tell-apart.ts'
import { guessChance, type TellApartTest } from './tell-apart-tests.ts'

/**
 * The fewest right answers among n that are significant: the smallest k with P(X ≥ k) ≤ alpha by guessing
 * (two-sided: 2·P(X ≥ k) ≤ alpha). Refuses `never-reached` when even n right answers are not enough.
 *
 * @example fewestCorrect('triangle', 24) // {"ok": true, "correct": 13} (FAO V7180E, appendix A, 5 %)
 */
export function fewestCorrect(
  test: TellApartTest,
  n: number,
  alpha = 0.05,
  sides: Sides = 'one-sided',
): Answer<{ correct: number }> {
  const tail = sides === 'one-sided' ? alpha : alpha / 2
  const guess = guessChance(test)
  let correct = Math.min(n, binomialQuantile(1 - tail, n, guess) + 1) + 1
  while (correct > 0 && binomialAtLeast(correct - 1, n, guess) <= tail * (1 + 1e-12)) correct -= 1
  return correct > n ? refuse('never-reached') : { ok: true, correct }
}

/**
 * Chance that n answers come out significant when a share of people really tell the samples apart (the others guess):
 * a right answer then has chance share + (1 − share)·guess. 0 where no count is significant.
 *
 * @example tellApartPower('triangle', 3, 1) // 1 (who always tells them apart is always right)
 */
export function tellApartPower(
  test: TellApartTest,
  n: number,
  discriminators: number,
  alpha = 0.05,
  sides: Sides = 'one-sided',
): number {
  const least = fewestCorrect(test, n, alpha, sides)
  if (!least.ok) return 0
  const guess = guessChance(test)
  return binomialAtLeast(least.correct, n, discriminators + (1 - discriminators) * guess)
}

interface AskedOfTest {
  alpha: number
  power: number
  sides: Sides
  /** Numbers of answers beyond this are not tried. */
  limit: number
}

/**
 * How many independent answers a tell-apart test needs: the smallest number whose power reaches what is asked, and the
 * smallest from which it always does (power saw-tooths with n). Searched up to `limit`; refuses `never-reached` beyond.
 *
 * @example answersNeeded('triangle', 1) // {"ok": true, "smallest": 3} (1/27 is the first power of 1/3 below 5 %)
 */
export function answersNeeded(
  test: TellApartTest,
  discriminators: number,
  { alpha = 0.05, power = 0.8, sides = 'one-sided', limit = 3000 }: Partial<AskedOfTest> = {},
): Answer<{ smallest: number; alwaysFrom: number }> {
  let [smallest, alwaysFrom, heldFor] = [0, 0, 0]
  for (let n = 1; n <= limit; n += 1) {
    const reached = tellApartPower(test, n, discriminators, alpha, sides) >= power
    if (reached && smallest === 0) smallest = n
    if (reached && alwaysFrom === 0) alwaysFrom = n
    if (!reached) alwaysFrom = 0
    heldFor = reached ? heldFor + 1 : 0
    if (smallest > 0 && heldFor > 60 + smallest) return { ok: true, smallest, alwaysFrom }
  }
  return refuse('never-reached')
}
