import { type Absent, isPresent } from '@/core/findings/reason.ts'
import type { Page, Ranks } from '@/core/findings/response-findings-shape.ts'
import { decimalText, plainNumber, probabilityText } from '@/core/units/number-text.ts'
import { asSentenceStart, countText } from '@/core/wording/words/list-text.ts'
import { type LevelNaming, levelInWords } from './named-in-findings.ts'
import { reasonText } from './reason-text.ts'

/** What the ranks say beside the means: Friedman, agreement, rank sums with the least difference, and Page's L. */
export function rankFigures(ranks: Ranks | Absent, naming: LevelNaming): string[] {
  if (!isPresent(ranks)) return [`By rank: ${reasonText(ranks)}`]
  const { chiSquare, df, p, kendallW, rankSums, leastDifference, leftOut, page } = ranks
  const sums = rankSums.map(
    ({ level, sum }) => `${levelInWords(level, naming)} ${plainNumber(sum)}`,
  )
  const differ = isPresent(leastDifference)
    ? `Two levels differ by rank where their sums are ${decimalText(leastDifference, 1)} or more apart.`
    : `Which differ by rank: ${reasonText(leastDifference)}`
  return [
    `By rank: Friedman’s chi-square ${decimalText(chiSquare, 2)} with ${countText(df, 'degree')} of freedom, p ${probabilityText(p)}; Kendall’s W ${decimalText(kendallW, 2)} of 1.`,
    `Rank sums: ${sums.join(', ')}. ${differ}`,
    isPresent(page) ? pageText(page) : `In rising order: ${reasonText(page)}`,
    ...(leftOut > 0
      ? [
          `${asSentenceStart(countText(leftOut, 'taster'))} left out of the ranks, for want of a score at every level.`,
        ]
      : []),
  ]
}

const methods: Record<Page['method'], string> = {
  exact: 'exact',
  'exact-given-ties': 'exact, given the ties',
  normal: 'by the normal curve',
  'normal-given-ties': 'by the normal curve, given the ties',
}

const sides: Record<Page['direction'], string> = {
  rising: 'one-sided, rising as expected',
  falling: 'one-sided, falling as expected',
  'two-sided': 'two-sided, since no direction was written down',
}

function pageText({ l, p, method, direction }: Page): string {
  return `In rising order: Page’s L ${plainNumber(l)}, p ${probabilityText(p)} (${sides[direction]}; ${methods[method]}).`
}
