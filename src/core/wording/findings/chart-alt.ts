import { isPresent } from '@/core/findings/reason.ts'
import type { ResponseFindings } from '@/core/findings/response-findings-shape.ts'
import type { Pair } from '@/core/findings/rungs/rung-shape.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { countText } from '@/core/wording/words/list-text.ts'
import type { RungName } from './answer-of-rung.ts'
import { differenceDecimals, differenceText, intervalText } from './difference-text.ts'
import { type LevelNaming, levelInWords } from './named-in-findings.ts'

/** A response chart in words, for those who do not see it: every level with its mean and interval. */
export function chartAlt(
  found: ResponseFindings,
  rung: RungName | null,
  naming: LevelNaming,
): string {
  const answer = rung === null ? null : found[rung]
  if (answer === null || !isPresent(answer))
    return `${found.name} at ${countText(found.levels.length, 'level')}: ${countText(found.n, 'value')}, without means to compare.`
  const means = answer.means.map(
    ({ level, estimate, low, high }) =>
      `${levelInWords(level, naming)} ${decimalText(estimate, differenceDecimals((high - low) / 2))} (${intervalText(low, high)})`,
  )
  return `${found.name}, means with 95 % intervals: ${means.join('; ')}.`
}

/** The picture of pairs in words. */
export function pairsAlt(pairs: readonly Pair[], naming: LevelNaming): string {
  const said = pairs.map(
    ({ a, b, difference, low, high }) =>
      `${levelInWords(a, naming)} to ${levelInWords(b, naming)} ${differenceText(difference)} (${intervalText(low, high)})`,
  )
  return `Differences: ${said.join('; ')}.`
}
