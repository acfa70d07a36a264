import type { TradeOff } from '@/core/findings/findings-document.ts'
import { isPresent } from '@/core/findings/reason.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { asSentenceStart, countText } from '@/core/wording/words/list-text.ts'
import { type LevelNaming, levelInWords } from './named-in-findings.ts'

/** Which level stands highest when the responses are weighed against one another: a figure of wishes, not a finding. */
export function tradeOffSentence({ levels, weights }: TradeOff, naming: LevelNaming): string {
  const weighed = weights.filter(({ weight }) => weight > 0).length
  const known = levels.flatMap(({ level, overall }) =>
    isPresent(overall) ? [{ level, overall }] : [],
  )
  const [top] = known.toSorted((a, b) => b.overall - a.overall)
  const first = asSentenceStart(countText(weighed, 'response'))
  return top
    ? `${first} weighed as you weigh them: ${levelInWords(top.level, naming)} stands highest, ${decimalText(top.overall, 2)} of 1; by the means alone.`
    : `${first} weighed: no level is acceptable in all.`
}
