import { type Absent, isPresent } from '@/core/findings/reason.ts'
import type { Easiest } from '@/core/findings/response-findings-shape.ts'
import type { LevelEase, ScoreTable } from '@/core/findings/table/score-table.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { failedTimes } from '@/core/wording/bench/failure-text.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { levelNameText } from '@/core/wording/words/level-text.ts'
import { listText } from '@/core/wording/words/list-text.ts'
import { differenceDecimals } from './difference-text.ts'
import { reasonText } from './reason-text.ts'

/**
 * The default ending: the easiest level that is as good as the best liked within the margin, with what it spares.
 * Where there is none, why, in one sentence.
 */
export function easiestSentence(
  easiest: Easiest | Absent,
  scores: Pick<ScoreTable, 'factor' | 'ease'>,
): string {
  if (!isPresent(easiest)) return reasonText(easiest)
  const unit = scores.factor.unitOfMeasure
  const level = levelNameText(easiest.level, unit)
  const best = levelNameText(easiest.against, unit)
  const ease = scores.ease?.find((each) => each.level === easiest.level)
  const other = scores.ease?.find((each) => each.level === easiest.against)
  if (easiest.level === easiest.against) {
    const alone = easiest.passes.length === 1
    const rest = alone
      ? ', and no other level is shown to be as good'
      : ', and the easiest among those as good'
    return `${level} is the best liked${rest}${ease ? `; it ${failedTimes(ease.failures)}` : ''}.`
  }
  const short = decimalText(
    Math.max(0, -easiest.lowerLimit),
    differenceDecimals(easiest.lowerLimit),
  )
  const parts = ease ? [failedTimes(ease.failures)] : []
  const spared = sparedSeconds(ease, other)
  if (spared !== null) parts.push(`took ${durationText(spared)} less of your hands`)
  const eased = parts.length > 0 ? `; it ${listText(parts)}` : ''
  return `${level} is no more than ${short} below the best liked, ${best}${eased}.`
}

function sparedSeconds(ease: LevelEase | undefined, other: LevelEase | undefined): number | null {
  if (ease?.handsSeconds == null || other?.handsSeconds == null) return null
  const spared = other.handsSeconds - ease.handsSeconds
  return spared >= 30 ? spared : null
}
