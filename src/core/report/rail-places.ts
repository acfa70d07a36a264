import { apartTabs } from '@/core/figure/apart-tabs.ts'
import type { LevelAxis, LevelPosition } from '@/core/figure/level-axis.ts'
import { levelFaces } from '@/core/figure/level-faces.ts'

export interface RailTabPlace extends LevelPosition {
  lines: string[]
  /** Of the tab's middle, and of the level's true place, from the left end of the rail. */
  tabPixels: number
  placePixels: number
  widthPixels: number
}

export interface RailPlaces {
  tabs: RailTabPlace[]
  tabHeight: number
  /** Between tabs and beam, where hairlines lead to the true places; 0 where every tab stands over its own. */
  gapPixels: number
  /** Under the rail: what each number on a tab stands for, where names are too long for tabs; else empty. */
  key: string[]
}

const glyphPixels = 7.2
const linePixels = 14
const mostLines = 4
const footAndAir = 12

/**
 * Where the tabs of a rail in ink stand, each with its whole name: levels of a number move apart where they would touch, options
 * of a choice share the room and break their names into lines, and where that takes more than four, tabs wear numbers with a key.
 */
export function railPlaces(
  axis: LevelAxis,
  letters: ReadonlyMap<string, string>,
  widthPixels: number,
): RailPlaces {
  const options = axis.positions.map(({ levelId, label }) => ({
    letter: letters.get(levelId),
    name: label,
  }))
  const room = widthPixels / Math.max(1, options.length) - 6
  const { lines: faces, key } = axis.ordered
    ? levelFaces(options, Number.POSITIVE_INFINITY, 1)
    : levelFaces(options, (room - 8) / glyphPixels, mostLines)
  const wanted = faces.map((lines, index) => ({
    at: axis.positions[index]?.at ?? 0,
    widthPixels: Math.max(30, Math.max(...lines.map((line) => line.length)) * glyphPixels + 10),
  }))
  const lefts = apartTabs(wanted, widthPixels)
  const tabs = axis.positions.map((position, index): RailTabPlace => {
    const width = wanted[index]?.widthPixels ?? 0
    return {
      ...position,
      lines: faces[index] ?? [],
      tabPixels: (lefts[index] ?? 0) + width / 2,
      placePixels: position.at * widthPixels,
      widthPixels: width,
    }
  })
  const moved = tabs.some((tab) => Math.abs(tab.tabPixels - tab.placePixels) > 1)
  return {
    tabs,
    tabHeight: footAndAir + linePixels * Math.max(1, ...faces.map((lines) => lines.length)),
    gapPixels: moved ? 10 : 0,
    key,
  }
}
