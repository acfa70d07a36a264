import { type Absent, isPresent } from '@/core/findings/reason.ts'
import type { Equivalence } from '@/core/findings/response-findings-shape.ts'
import { levelNameText } from '@/core/wording/words/level-text.ts'
import { differenceDecimals, differenceText } from './difference-text.ts'

/** Each level against the best liked: its difference, below zero is worse, and how low it may be. Empty where none was compared. */
export function asGoodFigures(equivalence: Equivalence[] | Absent, unit: string): string[] {
  if (!isPresent(equivalence)) return []
  return equivalence.map(({ level, against, difference, low, passes }) => {
    const decimals = differenceDecimals(difference - low)
    return `${levelNameText(level, unit)} against ${levelNameText(against, unit)}: ${differenceText(difference, decimals)}, at least ${differenceText(low, decimals)}; ${passes ? 'as good' : 'not shown to be as good'}.`
  })
}
