import type { Conclusion } from '@/core/findings/evidence/conclusion-shape.ts'
import { isPresent } from '@/core/findings/reason.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { plainNumber } from '@/core/units/number-text.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { asSentenceStart, countText, listText } from '@/core/wording/words/list-text.ts'
import { noneAsGoodWords } from './ending-sentence.ts'
import { type LevelNaming, levelInWords } from './named-in-findings.ts'

/** Which levels are shown to be as good as the best, and what failed or took longest: the table in one line. */
export function costSentence(
  { asGood, better }: Pick<Conclusion, 'asGood' | 'better'>,
  naming: LevelNaming,
  { ease }: Pick<ScoreTable, 'ease'>,
): string {
  const costs = ease ? costWords(ease, naming) : ''
  if (!isPresent(asGood))
    return [noneAsGoodWords(asGood, { better }), costs].filter(Boolean).join(' ')
  const passing = asGood.levels.filter(({ passes }) => passes)
  const margin = `within your margin of ${plainNumber(asGood.margin)}`
  const good =
    passing.length === 0
      ? notShownWords(asGood.named, naming, margin)
      : `${asSentenceStart(listText(passing.map(({ level }) => levelInWords(level, naming))))} ${passing.length === 1 ? 'is' : 'are'} as good as the best ${margin}.`
  return [good, costs].filter(Boolean).join(' ')
}

/** A level named before the mix stands alone in question; of the others nothing is claimed. */
function notShownWords(named: string | null, naming: LevelNaming, margin: string): string {
  return named === null
    ? `None is shown to be as good as the best ${margin}.`
    : `${asSentenceStart(levelInWords(named, naming))}, named before the mix, is not shown to be as good as the best ${margin}; of the others it was not asked.`
}

function costWords(ease: NonNullable<ScoreTable['ease']>, naming: LevelNaming): string {
  const failed = ease.filter(({ failures }) => failures > 0)
  const hands = ease.flatMap(({ handsSeconds }) => handsSeconds ?? [])
  const parts = [
    failed.length === 0
      ? 'nothing failed'
      : listText(
          failed.map(
            ({ level, failures }) =>
              `${countText(failures, 'piece')} of ${levelInWords(level, naming)} failed`,
          ),
        ),
  ]
  if (hands.length > 1 && Math.max(...hands) - Math.min(...hands) >= 60)
    parts.push(
      `hands on from ${durationText(Math.min(...hands))} to ${durationText(Math.max(...hands))}`,
    )
  return `${asSentenceStart(parts.join('; '))}.`
}

/** Handling scores are turned so that more is easier, whichever way they were asked; the head of their column says so. */
export const handlingHead = 'Ease of handling, 9 is easiest'
