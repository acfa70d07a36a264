import type { Level } from '@/core/trial/level.ts'
import { plainNumber } from '@/core/units/number-text.ts'
import { levelShort } from '@/core/wording/words/level-text.ts'
import { listText } from '@/core/wording/words/list-text.ts'

/**
 * The water of each level where some have one of their own ("Bag A 68 % and Bag B that of the formula"), in % of all flour;
 * null where all have the formula's, or the factor's.
 */
export function ownWatersText(levels: readonly Level[]): string | null {
  const waters = levels.map(ownWater)
  if (waters.every((percent) => percent === null)) return null
  return listText(
    levels.map((level, at) => {
      const percent = waters[at] ?? null
      const water = percent === null ? 'that of the formula' : `${plainNumber(percent)} %`
      return `${levelShort(level)} ${water}`
    }),
  )
}

function ownWater({ changes }: Level): number | null {
  const own = changes?.find(({ what }) => what === 'hydration')
  return own?.what === 'hydration' ? own.percent : null
}
