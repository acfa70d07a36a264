import { isPresent } from '@/core/findings/reason.ts'
import type { ResponseFindings } from '@/core/findings/response-findings-shape.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { asSentenceStart, countText, listText } from '@/core/wording/words/list-text.ts'
import { midSentence } from '@/core/wording/words/mid-sentence.ts'
import type { Naming } from './answer-of-rung.ts'

/** What a finding rests on: how many scores, of whom, in how many sessions; what got its level separately; what is missing. */
export function restsOn(
  scores: ScoreTable,
  found: ResponseFindings,
  responseIndex: number,
): string[] {
  const rows = scores.rows.filter((row) => row.values[responseIndex] != null)
  const count = (pick: (row: (typeof rows)[number]) => string | null) =>
    new Set(rows.map(pick).filter((key) => key !== null)).size
  const tasters = count((row) => row.taster)
  const parts = [
    countText(found.n, tasters > 0 ? 'score' : 'value'),
    ...(tasters > 0 ? [countText(tasters, 'taster')] : []),
    countText(scores.levels.length, 'level'),
    ...(scores.replicated
      ? []
      : [
          countText(
            count((row) => row.session),
            'session',
          ),
        ]),
    countText(
      count((row) => row.piece),
      'piece',
    ),
  ]
  const inNoBlock = scores.replicated
    ? ['They were made again in no block, so the one error is that between those of a level.']
    : []
  const lines = [`It rests on ${listText(parts)}.`, ...inNoBlock, unitSentence(scores)]
  if (found.conclusion.rung === 'factor' && found.conclusion.shown.length > 0)
    lines.push(coveredSentence(scores, tasters > 0))
  lines.push(...mayBeTheBake(found.conclusion, scores))
  if (found.failures > 0)
    lines.push(
      `${asSentenceStart(countText(found.failures, 'cell'))} ${found.failures === 1 ? 'has' : 'have'} no score because the dough or piece failed: that is an answer too, and stands under failures.`,
    )
  if (isPresent(found.ranks) && found.ranks.leftOut > 0)
    lines.push(
      `${asSentenceStart(countText(found.ranks.leftOut, 'taster'))} could not be ranked, for want of a score at every level.`,
    )
  return lines
}

/** Where these pieces differ and the factor itself is not shown: how much of that may be how they were made. */
function mayBeTheBake(
  { near, shown }: ResponseFindings['conclusion'],
  { factor }: Pick<ScoreTable, 'factor'>,
): string[] {
  if (!near?.differ || !near.chance || shown.length > 0) return []
  return [
    `About ${decimalText(near.chance.share * 100, 0)} % of the spread between the levels may be how these ${near.rung} were made and not ${midSentence(factor.name)}.`,
  ]
}

/** What "whenever they are made again" covers: what stayed the same all the while was never asked. */
function coveredSentence({ unit }: Pick<Naming, 'unit'>, byTasters: boolean): string {
  const made = unit === 'batch' ? 'Doughs' : 'Pieces'
  return `${made} made again means like these: other flours, another kitchen${byTasters ? ' and other tasters' : ''} were not asked.`
}

/** What got its level separately, and so what a finding may speak of. */
export function unitSentence({ unit }: Pick<Naming, 'unit'>): string {
  return unit === 'batch'
    ? 'The unit is the batch: each level was a dough of its own, so only doughs made again tell of the factor itself.'
    : 'The unit is the piece: the levels parted after the dough was made, so pieces made again tell of the factor itself.'
}
