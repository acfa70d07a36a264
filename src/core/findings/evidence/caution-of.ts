import { type Absent, isPresent } from '@/core/findings/reason.ts'
import type { Caution } from './conclusion-shape.ts'
import type { Beside, Shown } from './evidence-shape.ts'

/** Levels that differ by less in minutes from the oven, or in their place, are not worth a word (common practice). */
const leastMinutes = 10
const leastPlaces = 1

/**
 * Whether freshness or order takes away what is shown: it follows the levels so that the two cannot be told apart, or at equal minutes (places) the
 * levels no longer differ. Asked only where something is shown, and where the levels' own means of it lie apart enough to matter.
 */
export function cautionOf(
  shown: readonly Shown[],
  freshness: Beside | Absent,
  order: Beside | Absent,
): Caution | null {
  if (shown.length === 0) return null
  return (
    cautionFrom('freshness', freshness, leastMinutes) ?? cautionFrom('order', order, leastPlaces)
  )
}

function cautionFrom(
  what: Caution['what'],
  beside: Beside | Absent,
  least: number,
): Caution | null {
  if (!isPresent(beside) || beside.apart < least) return null
  const { answer, apart } = beside
  if (!isPresent(answer))
    return answer.reason === 'covariate-not-separable' || answer.reason === 'too-few-to-tell'
      ? { what, is: 'not-told-apart', apart }
      : null
  if (!answer.told) return { what, is: 'not-told-apart', apart }
  const mattersItself = answer.low > 0 || answer.high < 0
  return mattersItself && answer.p >= 0.05 ? { what, is: 'takes-it', apart } : null
}
