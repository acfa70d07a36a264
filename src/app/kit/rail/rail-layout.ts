import { levelAxis } from '@/core/figure/level-axis.ts'
import type { Level } from '@/core/trial/level.ts'
import { levelShort } from '@/core/wording/words/level-text.ts'
import { stackedTabs } from './stacked-tabs.ts'

export type RailSize = 'plain' | 'picture'

export interface PlacedTab {
  levelId: string
  words: string
  letter: string | undefined
  control: boolean
  /** 0 to 1 along the rail: where the level truly stands, whatever room its tab needs. */
  at: number
  widthPixels: number
  leftPixels: number
  /** How high above the axis its foot stands. */
  liftPixels: number
}

const measures = {
  plain: { row: 42, glyph: 9.4, rim: 20, least: 44, most: 168, head: 6 },
  picture: { row: 24, glyph: 7.6, rim: 10, least: 24, most: 96, head: 0 },
}

/** Where everything on a level rail stands for a rail of this width; its height follows from the rows it needs. */
export function railLayout(
  levels: readonly Level[],
  letters: ReadonlyMap<string, string> | undefined,
  size: RailSize,
  railPixels: number,
) {
  const axis = levelAxis(levels)
  const { row, glyph, rim, least, most, head } = measures[size]
  const faces = axis.positions.map((position) => {
    const words = levelShort(position)
    const letter = letters?.get(position.levelId)
    const glyphs = words.length + (letter ? letter.length + 0.6 : 0)
    const widthPixels = Math.min(most, Math.max(least, glyphs * glyph + rim))
    return { ...position, words, letter, widthPixels }
  })
  const stacked = stackedTabs(faces, railPixels)
  const tabs: PlacedTab[] = faces.map((face, index) => {
    const { leftPixels, row: rowNumber } = stacked[index] ?? { leftPixels: 0, row: 0 }
    return { ...face, leftPixels, liftPixels: rowNumber * row }
  })
  const heightPixels = Math.max(0, ...tabs.map((tab) => tab.liftPixels)) + row + head
  return { axis, tabs, heightPixels }
}
