import { readsFromWeights } from './level-ratio.ts'
import type { Plan } from './plan-record.ts'

/**
 * Whether the formula itself differs from level to level: a factor that acts on a percentage, or a choice that swaps an
 * ingredient or brings its own water. Times, temperatures, folds, piece masses and factors of the baker's own leave it alone.
 */
export function movesFormula({ factor, levels }: Pick<Plan, 'factor' | 'levels'>): boolean {
  if (readsFromWeights(factor.acts)) return true
  return levels.some(({ changes = [] }) =>
    changes.some(({ what }) => what === 'ingredient' || what === 'hydration'),
  )
}
