import type { CSSProperties } from 'react'
import { levelPaints } from '@/core/figure/level-paints.ts'
import type { LevelPattern } from '@/core/figure/level-ramp.ts'
import type { Level } from '@/core/trial/level.ts'

export interface LevelLook {
  style: CSSProperties
  pattern: LevelPattern | null
}

const known = new WeakMap<readonly Level[], ReadonlyMap<string, LevelLook>>()

/**
 * The colour of each level's foot for both appearances at once: CSS takes the one that is in force, and print the strokes.
 * Worked out once for each list of levels, however many tabs show it; a list is never changed, only replaced.
 */
export function levelLooks(levels: readonly Level[]): ReadonlyMap<string, LevelLook> {
  const found = known.get(levels) ?? looksOf(levels)
  known.set(levels, found)
  return found
}

function looksOf(levels: readonly Level[]): ReadonlyMap<string, LevelLook> {
  const light = levelPaints(levels, 'light')
  const dark = levelPaints(levels, 'dark')
  return new Map(
    Array.from(light, ([levelId, day], index) => {
      const night = dark.get(levelId) ?? day
      return [
        levelId,
        {
          style: {
            '--fill': `light-dark(${day.fill}, ${night.fill})`,
            '--strokes': index + 1,
          } as CSSProperties,
          pattern: day.pattern,
        },
      ]
    }),
  )
}
