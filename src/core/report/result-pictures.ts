import { bestSpan } from '@/core/figure/best-span.ts'
import { axisLevels, chartOfResponse, withMeansAlone } from '@/core/figure/chart-of-response.ts'
import { levelPaints } from '@/core/figure/level-paints.ts'
import { pairPicture } from '@/core/figure/pair-picture.ts'
import { isPresent } from '@/core/findings/reason.ts'
import type { ResponseFindings } from '@/core/findings/response-findings-shape.ts'
import type { Rung } from '@/core/findings/rungs/rung-shape.ts'
import type { RungName } from '@/core/wording/findings/answer-of-rung.ts'
import { bestLabel } from '@/core/wording/findings/best-label.ts'
import { chartAlt, pairsAlt } from '@/core/wording/findings/chart-alt.ts'
import { chartTitle, marginLabel } from '@/core/wording/findings/chart-title.ts'
import { levelInShort } from '@/core/wording/findings/named-in-findings.ts'
import { asSentenceStart } from '@/core/wording/words/list-text.ts'
import { midSentence } from '@/core/wording/words/mid-sentence.ts'
import type { FoundScores } from './found-scores.ts'
import type { ChartBlock, PairsBlock } from './report-block.ts'

/** The chart of one response with the rail above it. */
export function chartBlock(
  found: FoundScores,
  response: ResponseFindings,
  index: number,
  rung: RungName | null,
): ChartBlock {
  const { scores, findings, curves, letters } = found
  const { factor } = findings
  const answer = rung === null ? null : response[rung]
  const best = answer !== null && isPresent(answer) ? answer.best : null
  const span = bestSpan(response.conclusion, best !== null && isPresent(best) ? best : null)
  const drawn = chartOfResponse(scores, index, response, rung, curves[index] ?? null)
  const bestText =
    span === null
      ? null
      : bestLabel(
          span,
          scores.levels.map((level) => level.name),
          factor.unitOfMeasure,
        )
  const margin = marginLabel(scores.responses[index])
  const alone = response.conclusion.oneEvening !== null
  const levels = axisLevels(scores.levels)
  const marginText = alone || margin === null ? '' : `${asSentenceStart(margin)}.`
  return {
    kind: 'chart',
    chart: alone ? withMeansAlone(drawn, response) : drawn,
    paints: levelPaints(levels, 'light'),
    darkPaints: levelPaints(levels, 'dark'),
    letters,
    title: `${response.name} at each level: every value as a dot, means as crosses${alone ? '' : ' with their 95 % intervals'}`,
    xTitle: factor.unitOfMeasure === '' ? factor.name : `${factor.name}, ${factor.unitOfMeasure}`,
    yTitle: chartTitle(response.name, scores.responses[index]),
    bestText,
    alt: [
      chartAlt(response, rung, findings),
      bestText === null ? '' : `${asSentenceStart(bestText)}.`,
      marginText,
    ]
      .filter((text) => text !== '')
      .join(' '),
  }
}

/** The pairs of a rung as a picture of intervals against the margin. */
export function pairsBlock(
  found: FoundScores,
  response: ResponseFindings,
  index: number,
  answer: Rung,
): PairsBlock {
  const name = (levelId: string) => {
    const letter = found.letters.get(levelId)
    const short = levelInShort(levelId, found.findings)
    return letter === undefined ? short : `${letter} ${short}`
  }
  const margin = found.scores.responses[index]?.margin ?? null
  return {
    kind: 'pairs',
    picture: pairPicture(
      answer.pairs.map((pair) => ({
        ...{ ...pair, a: name(pair.a), b: name(pair.b) },
        levelIds: [pair.a, pair.b] as const,
      })),
      margin,
    ),
    title:
      'Differences of all pairs with simultaneous 95 % intervals; filled where zero is left out',
    unit: `difference in ${midSentence(response.name)}`,
    alt: pairsAlt(answer.pairs, found.findings),
  }
}
