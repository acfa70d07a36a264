import betaincinv from '@stdlib/math-base-special-betaincinv'
import { binomialAtLeast } from '@/core/statistics/distributions/binomial.ts'
import { type Answer, refuse } from '@/core/statistics/reason.ts'
import { dPrimeOf, guessChance, type TellApartTest } from './tell-apart-tests.ts'

export type Sides = 'one-sided' | 'two-sided'

type Interval = { estimate: number; low: number; high: number }

export type TellApart = {
  correct: number
  n: number
  p: number
  share: Interval
  discriminators: Interval
  dPrime: Interval
}

/**
 * Can people tell two samples apart? Exact binomial p of at least so many right answers among n independent ones (two-sided,
 * for a paired comparison without an expected direction: twice the smaller tail, at most 1, and `correct` counts either
 * sample); share of right answers with its exact Clopper–Pearson interval; from it the share of discriminators
 * (share − guess)/(1 − guess) and d′, both not below 0. d′ is Infinity where all answers may be right.
 *
 * Refuses `no-rows` when nobody answered.
 *
 * @example tellApart('triangle', 13, 24) // {"p": 0.0284} (exact binomial)
 */
export function tellApart(
  test: TellApartTest,
  correct: number,
  n: number,
  sides: Sides = 'one-sided',
  confidence = 0.95,
): Answer<TellApart> {
  if (n === 0) return refuse('no-rows')
  if (!Number.isInteger(correct) || !Number.isInteger(n) || correct < 0 || correct > n) {
    throw new RangeError(`${correct} of ${n} is no count`)
  }
  const guess = guessChance(test)
  const more = binomialAtLeast(correct, n, guess)
  const fewer = binomialAtLeast(n - correct, n, 1 - guess)
  const p = sides === 'one-sided' ? more : Math.min(1, 2 * Math.min(more, fewer))
  return { ok: true, correct, n, p, ...sharesOf(test, correct, n, confidence) }
}

/**
 * The share of right answers, of discriminators and d′ by person: each counts once with the share of their answers that was right, so
 * that who answers often makes the interval no narrower. With one answer each it is that of `tellApart`. The exact interval at n people
 * is on the safe side: a person's share over several answers scatters less than one answer. At least one person.
 *
 * @example tellApartByPerson('triangle', [1, 0, 1, 0.5]).share // {"estimate": 0.625} (by hand: 2.5 of 4)
 */
export function tellApartByPerson(
  test: TellApartTest,
  people: readonly number[],
  confidence = 0.95,
): Pick<TellApart, 'share' | 'discriminators' | 'dPrime'> {
  const right = people.reduce((sum, share) => sum + share, 0)
  return sharesOf(test, right, people.length, confidence)
}

function sharesOf(test: TellApartTest, right: number, n: number, confidence: number) {
  const guess = guessChance(test)
  const share = { estimate: right / n, ...exactInterval(right, n, confidence) }
  return {
    share,
    discriminators: mapInterval(share, (chance) => Math.max(0, (chance - guess) / (1 - guess))),
    dPrime: mapInterval(share, (chance) => dPrimeOf(test, chance)),
  }
}

/** Clopper–Pearson limits of a share: quantiles of the beta distribution, which the count need not be whole for. */
export function exactInterval(count: number, n: number, confidence: number) {
  const tail = (1 - confidence) / 2
  return {
    low: count === 0 ? 0 : betaincinv(tail, count, n - count + 1),
    high: count === n ? 1 : betaincinv(tail, count + 1, n - count, true),
  }
}

function mapInterval({ estimate, low, high }: Interval, map: (chance: number) => number): Interval {
  return { estimate: map(estimate), low: map(low), high: map(high) }
}
