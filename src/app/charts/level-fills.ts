import type { CSSProperties } from 'react'
import type { AxisLevel } from '@/core/figure/level-axis.ts'
import { levelPaints } from '@/core/figure/level-paints.ts'

/** The colour of every level's points in both appearances; options of a choice are told apart by place, not by colour. */
export function levelFills(levels: readonly AxisLevel[]): Map<string, string> {
  const light = levelPaints(levels, 'light')
  const dark = levelPaints(levels, 'dark')
  return new Map(
    Array.from(light, ([levelId, day]) => [
      levelId,
      day.pattern === null
        ? `light-dark(${day.fill}, ${dark.get(levelId)?.fill ?? day.fill})`
        : 'var(--soft)',
    ]),
  )
}

/** What a dot or a foot of a chart takes from its level; the styles lay it on, and leave it open on paper. */
export const levelStyle = (fills: ReadonlyMap<string, string>, levelId: string): CSSProperties =>
  ({ '--level': fills.get(levelId) }) as CSSProperties
