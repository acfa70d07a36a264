import { type Absent, isPresent } from '@/core/findings/reason.ts'
import type { Beside } from '@/core/findings/rungs/rung-shape.ts'
import { decimalText, probabilityText } from '@/core/units/number-text.ts'
import { differenceText } from './difference-text.ts'
import { reasonText } from './reason-text.ts'

/** Was it freshness, or the order of tasting? One sentence, or why it cannot be said. */
export function besideSentence(beside: Beside | Absent, what: 'freshness' | 'order'): string {
  const name = what === 'freshness' ? 'Freshness' : 'The order of tasting'
  if (!isPresent(beside)) {
    const named = beside.reason === 'no-minutes' || beside.reason === 'no-positions'
    return named ? reasonText(beside) : `${name}: ${reasonText(beside)}`
  }
  if (!beside.separable)
    return `${name} and level cannot be told apart here: allowing for it makes the intervals ${decimalText(beside.widening, 1)} times as wide.`
  const each = what === 'freshness' ? 'minute from the oven' : 'place in the order'
  const still =
    beside.p < 0.05 ? 'the levels still differ' : 'no difference of the levels is settled'
  return `${name}: scores changed by ${differenceText(beside.slope)} for each ${each}. At equal ${what === 'freshness' ? 'minutes' : 'places'} ${still} (p ${probabilityText(beside.p)}), with intervals ${decimalText(beside.widening, 2)} times as wide.`
}
