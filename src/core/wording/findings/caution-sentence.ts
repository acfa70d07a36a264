import { decimalText } from '@/core/units/number-text.ts'
import type { Spoken } from './shown-sentence.ts'

/** What takes the answer away, in one sentence; empty where nothing does. */
export function cautionSentence({ conclusion }: Spoken): string {
  const { caution } = conclusion
  if (!caution) return ''
  const fresh = caution.what === 'freshness'
  const apart = fresh ? ageText(caution.apart) : `${decimalText(caution.apart, 1)} places`
  const differ = fresh
    ? `the levels were up to ${apart} apart in age when they were tasted`
    : `the levels stood up to ${apart} apart in the order of tasting`
  return caution.is === 'not-told-apart'
    ? `But ${differ}: ${fresh ? 'freshness' : 'order'} and level cannot be told apart here. Make it again with that equal.`
    : `But ${differ}, and brought to equal ${fresh ? 'age' : 'places'} no difference is left. Make it again with that equal.`
}

/** Minutes, from two hours up hours. */
function ageText(minutes: number): string {
  return minutes < 120
    ? `${decimalText(minutes, 0)} minutes`
    : `${decimalText(minutes / 60, 0)} hours`
}
