import type { Plan } from '@/core/trial/plan-record.ts'
import type { BatchWeights, WeighLine } from '@/core/weighing/batch-weights.ts'
import { isOf, type LoggedWeight } from '@/core/weighing/level-from-weights.ts'

/** A reading asks before it is kept when it moves the level by more than this part of the smallest step between two levels. */
const partOfStep = 0.1
/** What does not make the level asks when it is off its target by more than this part of it. */
const partOfTarget = 0.05

/** Another weight that would bring the level back: so much more of it, or (below zero) so much less than planned. */
export interface BringsBack {
  key: string
  moreGrams: number
}

/** A reading that is off: by how much, what level it makes, and what would mend it. */
export interface OddWeight {
  offGrams: number
  /** The level with the planned reading and with this one, in the factor's unit; null where weights do not make it. */
  level: { planned: number; would: number } | null
  /** For too much in the bowl: the other weights that would bring the level back, each for itself. */
  bringsBack: BringsBack[]
}

interface Reading {
  plan: Pick<Plan, 'levels'>
  batch: Pick<BatchWeights, 'lines'>
  /** What stands logged of this dough. */
  logged: readonly LoggedWeight[]
  key: string
  grams: number
}

/**
 * Whether a reading of one line of a weigh sheet is off by so much that it asks first; null where it can be kept as it is. With
 * N above and D below the line of the level (100 N / D), what `a` above and `b` below a gram of another weight gives, the level
 * L comes back with (L D - 100 N) / (100 a - L b) grams more of it: worked out from 100 (N + a x) / (D + b x) = L. Less is
 * named only of what is not in the bowl yet. Grams; levels in the factor's unit.
 */
export function oddWeight({ plan, batch, logged, key, grams }: Reading): OddWeight | null {
  const line = batch.lines.find((each) => each.key === key)
  if (!line) return null
  const offGrams = grams - line.grams
  if (Math.abs(offGrams) <= (line.resolutionGrams ?? 0)) return null
  const gramsOf = (each: WeighLine) => logged.find((one) => isOf(each, one))?.grams ?? each.grams
  const sums = (reading: number) =>
    batch.lines.reduce(
      ({ above, below }, each) => {
        const weight = each.key === key ? reading : gramsOf(each)
        const { share } = each
        return {
          above: above + (share?.above ?? 0) * weight,
          below: below + (share?.below ?? 0) * weight,
        }
      },
      { above: 0, below: 0 },
    )
  const enters = line.share !== null && (line.share.above !== 0 || line.share.below !== 0)
  const [asPlanned, asRead] = [sums(line.grams), sums(grams)]
  if (!enters || !(asPlanned.below > 0) || !(asRead.below > 0)) {
    return Math.abs(offGrams) > partOfTarget * line.grams
      ? { offGrams, level: null, bringsBack: [] }
      : null
  }
  const planned = (100 * asPlanned.above) / asPlanned.below
  const would = (100 * asRead.above) / asRead.below
  const step = smallestStep(plan)
  const odd =
    step === null
      ? Math.abs(offGrams) > partOfTarget * line.grams
      : Math.abs(would - planned) > partOfStep * step + 1e-9
  if (!odd) return null
  const bringsBack = batch.lines.flatMap((each): BringsBack[] => {
    if (each.key === key || each.share === null) return []
    const moves = 100 * each.share.above - planned * each.share.below
    if (Math.abs(moves) < 1e-9) return []
    const moreGrams = (planned * asRead.below - 100 * asRead.above) / moves
    const inBowl = logged.some((one) => isOf(each, one))
    const possible = moreGrams > 0 || (!inBowl && each.grams + moreGrams > 0)
    return possible ? [{ key: each.key, moreGrams }] : []
  })
  return { offGrams, level: { planned, would }, bringsBack: offGrams > 0 ? bringsBack : [] }
}

/** The smallest distance between two levels, in their unit; null with fewer than two that are numbers. */
function smallestStep({ levels }: Pick<Plan, 'levels'>): number | null {
  const values = levels
    .flatMap(({ value }) => (value === null ? [] : [value]))
    .toSorted((one, other) => one - other)
  const steps = values.slice(1).map((value, at) => value - (values[at] ?? value))
  const [smallest] = steps.filter((step) => step > 0).toSorted((one, other) => one - other)
  return smallest ?? null
}
