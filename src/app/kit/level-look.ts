import type { CSSProperties } from 'react'
import { levelPaints } from '@/core/figure/level-paints.ts'
import type { LevelPattern } from '@/core/figure/level-ramp.ts'
import type { Level } from '@/core/trial/level.ts'

export interface LevelLook {
  style: CSSProperties
  pattern: LevelPattern | null
}

/** The colours of each level's tab for both appearances at once: CSS takes the one that is in force, print the light one. */
export function levelLooks(levels: readonly Level[]): Map<string, LevelLook> {
  const light = levelPaints(levels, 'light')
  const dark = levelPaints(levels, 'dark')
  return new Map(
    Array.from(light, ([levelId, day]) => {
      const night = dark.get(levelId) ?? day
      return [
        levelId,
        {
          style: {
            '--fill': `light-dark(${day.fill}, ${night.fill})`,
            '--on-fill': `light-dark(${day.text}, ${night.text})`,
          } as CSSProperties,
          pattern: day.pattern,
        },
      ]
    }),
  )
}
