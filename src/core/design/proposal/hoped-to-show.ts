import type { FactorKind } from '@/core/trial/factor.ts'

/** What a trial is to show: a best in between, a rise or fall, that the least trouble does as well, or which of some options is better. */
export type HopedToShow = 'best-inside' | 'rise' | 'as-good' | 'pair'

const leastWillDo: readonly FactorKind[] = ['salt', 'fold-count', 'cold-hours', 'rest-time']

/** What most who change this want to know: how little of it will do, which option is better, else where the best lies (common practice, no source). */
export function usuallyHoped(kind: FactorKind): HopedToShow {
  if (kind === 'choice') return 'pair'
  return leastWillDo.includes(kind) ? 'as-good' : 'best-inside'
}
