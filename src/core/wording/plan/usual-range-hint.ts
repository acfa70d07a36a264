import { type UsualRange, usualRangesOf } from '@/core/formula/usual-ranges.ts'
import type { FactorKind } from '@/core/trial/factor.ts'
import { plainNumber } from '@/core/units/number-text.ts'

const quantities: Partial<Record<FactorKind, UsualRange['of']>> = {
  hydration: 'hydration',
  salt: 'salt',
  yeast: 'yeast',
}

/** Usual ranges of a factor by style, in one line to set a level beside; nothing where none is known. */
export function usualRangeHint(kind: FactorKind): string | undefined {
  const quantity = quantities[kind]
  if (quantity === undefined) return undefined
  const ranges = usualRangesOf(quantity).map(
    ({ style, leastPercent, mostPercent }) =>
      `${style} ${plainNumber(leastPercent)} to ${plainNumber(mostPercent)}`,
  )
  if (ranges.length === 0) return undefined
  return `Usual in % of flour, as a hint and no limit: ${ranges.join(', ')}.`
}
