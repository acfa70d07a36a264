import { isPresent } from '@/core/findings/reason.ts'
import type { ResponseFindings } from '@/core/findings/response-findings-shape.ts'
import type { AgainstControl, Rung } from '@/core/findings/rungs/rung-shape.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { decimalText, plainNumber, shortProbabilityText } from '@/core/units/number-text.ts'
import {
  differenceDecimals,
  differenceText,
  intervalText,
  tableDecimals,
} from '@/core/wording/findings/difference-text.ts'
import { levelInShort, levelInWords } from '@/core/wording/findings/named-in-findings.ts'
import { reasonText } from '@/core/wording/findings/reason-text.ts'
import { rungSays, rungTitle } from '@/core/wording/findings/rung-text.ts'
import type { FoundScores } from './found-scores.ts'
import type { TableBlock } from './report-block.ts'

const none = '–'

/** What happened at each level, over all its values: a description, not a comparison. */
export function levelsTable(response: ResponseFindings, scores: ScoreTable): TableBlock {
  const value = (number: ResponseFindings['levels'][number]['mean'], decimals: number) =>
    isPresent(number) ? decimalText(number, decimals) : none
  const spans = response.levels.flatMap(({ low, high }) =>
    isPresent(low) && isPresent(high) ? [{ low, high }] : [],
  )
  const decimals = tableDecimals(spans)
  return {
    kind: 'table',
    caption: 'What happened: all values of each level',
    head: ['Level', 'n', 'Mean', 'SD', '95 % interval', 'Median', 'Failures'],
    rows: response.levels.map((level) => {
      const ease = scores.ease?.find((each) => each.level === level.level)
      const interval =
        isPresent(level.low) && isPresent(level.high)
          ? intervalText(level.low, level.high, decimals)
          : none
      return [
        levelInWords(level.level, scores),
        String(level.n),
        value(level.mean, decimals),
        value(level.sd, decimals),
        interval,
        value(level.median, Math.max(1, decimals - 1)),
        ease ? String(ease.failures) : none,
      ]
    }),
    figures: [false, true, true, true, true, true, true],
    rowLevels: response.levels.map(({ level }) => [level]),
  }
}

/** The three rungs side by side: test and verdict, or why a rung cannot answer. */
export function rungsTable(response: ResponseFindings, { findings }: FoundScores): TableBlock {
  const rows = (['pieces', 'doughs', 'factor'] as const).map((rung) => {
    const answer = response[rung]
    const title = rung === 'factor' ? `The factor (${findings.factor.name})` : rungTitle(rung)
    if (!isPresent(answer)) return [title, none, none, none, none, reasonText(answer)]
    return [
      title,
      decimalText(answer.f, 2),
      `${plainNumber(answer.df1)}, ${plainNumber(answer.df2)}`,
      shortProbabilityText(answer.p),
      decimalText(answer.residualSd, differenceDecimals(answer.residualSd) + 1),
      rungSays(response, rung).says,
    ]
  })
  return {
    kind: 'table',
    caption: 'How far the evidence carries',
    head: ['Rung', 'F', 'df', 'p', 'Residual SD', 'Says'],
    rows,
    figures: [false, true, true, true, true, false],
  }
}

/** Marginal means of a rung with plain 95 % intervals. */
export function meansTable(answer: Rung, scores: ScoreTable): TableBlock {
  const decimals = tableDecimals(answer.means)
  return {
    kind: 'table',
    caption: 'Means, freed from who happened to taste',
    head: ['Level', 'Mean', 'Standard error', '95 % interval'],
    rows: answer.means.map(({ level, estimate, se, low, high }) => {
      return [
        levelInWords(level, scores),
        decimalText(estimate, decimals),
        decimalText(se, decimals),
        intervalText(low, high, decimals),
      ]
    }),
    figures: [false, true, true, true],
    rowLevels: answer.means.map(({ level }) => [level]),
  }
}

/** All pairs with their simultaneous intervals. */
export function pairsTable(answer: Rung, scores: ScoreTable): TableBlock {
  const decimals = tableDecimals(answer.pairs)
  return {
    kind: 'table',
    caption: 'All pairs, simultaneous 95 % intervals',
    head: ['Pair', 'Difference', '95 % interval', 'p'],
    rows: answer.pairs.map(({ a, b, difference, low, high, p }) => [
      `${levelInShort(a, scores)} → ${levelInWords(b, scores)}`,
      differenceText(difference, decimals),
      intervalText(low, high, decimals),
      shortProbabilityText(p),
    ]),
    figures: [false, true, true, true],
    rowLevels: answer.pairs.map(({ a, b }) => [a, b]),
  }
}

/** Each level against the control. */
export function againstControlTable(
  against: readonly AgainstControl[],
  scores: ScoreTable,
): TableBlock {
  const decimals = tableDecimals(against)
  return {
    kind: 'table',
    caption: `Against the control, simultaneous 95 % intervals${against.some(({ method }) => method === 'approximate') ? ' (approximate: unequal numbers)' : ''}`,
    head: ['Level', 'Difference', '95 % interval', 'p'],
    rows: against.map(({ level, difference, low, high, p }) => [
      levelInWords(level, scores),
      differenceText(difference, decimals),
      intervalText(low, high, decimals),
      shortProbabilityText(p),
    ]),
    figures: [false, true, true, true],
    rowLevels: against.map(({ level }) => [level]),
  }
}
