import type { Beside } from '@/core/findings/evidence/evidence-shape.ts'
import { type Absent, isPresent } from '@/core/findings/reason.ts'
import { decimalText, probabilityText } from '@/core/units/number-text.ts'
import { differenceText, intervalText } from './difference-text.ts'
import { reasonText } from './reason-text.ts'

/** Was it freshness, or the order of tasting? One sentence, or why it cannot be said. */
export function besideSentence(beside: Beside | Absent, what: 'freshness' | 'order'): string {
  const name = what === 'freshness' ? 'Freshness' : 'The order of tasting'
  if (!isPresent(beside)) {
    const named = beside.reason === 'no-minutes' || beside.reason === 'no-positions'
    return named ? reasonText(beside) : `${name}: ${reasonText(beside)}`
  }
  const { answer, apart } = beside
  const unit = what === 'freshness' ? 'minutes' : 'places'
  if (!isPresent(answer))
    return apart < 1e-6
      ? `${name}: all levels had the same on average, so it favours none.`
      : `${name}: the levels lie up to ${decimalText(apart, what === 'freshness' ? 0 : 1)} ${unit} apart. ${reasonText(answer)}`
  if (!answer.told)
    return `${name} and level cannot be told apart: the levels lie up to ${decimalText(apart, what === 'freshness' ? 0 : 1)} ${unit} apart.`
  // Minutes by tens, places one by one.
  const times = what === 'freshness' ? 10 : 1
  const each = what === 'freshness' ? '10 minutes from the oven' : 'place in the order'
  const still =
    answer.p < 0.05 ? 'the levels still differ' : 'no difference of the levels is settled'
  return `${name}: scores change by ${differenceText(answer.slope * times)} for each ${each} (${intervalText(answer.low * times, answer.high * times)}). At equal ${unit} ${still} (p ${probabilityText(answer.p)}), with intervals ${decimalText(answer.widening, 2)} times as wide.`
}
