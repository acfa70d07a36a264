import type { AsGood } from '@/core/findings/evidence/evidence-shape.ts'
import { type Absent, isPresent } from '@/core/findings/reason.ts'
import { differenceDecimals, differenceText } from './difference-text.ts'
import { type LevelNaming, levelInWords } from './named-in-findings.ts'

/** Each level against the best of the others: its difference, below zero is worse, and how low it may be. Empty where none was compared. */
export function asGoodFigures(asGood: AsGood | Absent, naming: LevelNaming): string[] {
  if (!isPresent(asGood)) return []
  return asGood.levels.map(({ level, short, low, passes }) => {
    const decimals = differenceDecimals(short - low)
    const hint = asGood.named !== null && asGood.named !== level
    const judged = hint
      ? 'not named before the mix, so a hint'
      : passes
        ? 'as good'
        : 'not shown to be as good'
    return `${levelInWords(level, naming)} against the best other level: ${differenceText(short, decimals)}, at least ${differenceText(low, decimals)}; ${judged}.`
  })
}
