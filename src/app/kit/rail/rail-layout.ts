import { apartTabs } from '@/core/figure/apart-tabs.ts'
import { type LevelAxis, levelAxis } from '@/core/figure/level-axis.ts'
import { type LevelFaces, levelFaces } from '@/core/figure/level-faces.ts'
import type { Level } from '@/core/trial/level.ts'
import { levelShort } from '@/core/wording/words/level-text.ts'

export type RailSize = 'plain' | 'picture'

export interface PlacedTab {
  levelId: string
  words: string
  /** What stands on the tab; of a choice with long names a number, whose name then stands under the rail. */
  lines: string[]
  /** The number with its whole name, where the tab wears the number alone. */
  numbered: string | null
  letter: string | undefined
  control: boolean
  side: 'above' | 'below'
  /** Where the level truly stands on the beam, whatever room its tab needs. */
  placePixels: number
  widthPixels: number
  leftPixels: number
}

export interface RailLayout {
  axis: LevelAxis
  tabs: PlacedTab[]
  twoSided: boolean
  /** Between a tab and the beam: nothing, or room for the hairlines that lead to the true places. */
  gapPixels: number
  tabPixels: number
}

/** A rail this narrow is one on a phone. */
const phonePixels = 480
const twoSidedFrom = 7
const sizes = {
  plain: { least: 60, leastOnPhone: 50, glyph: 9.4 },
  picture: { least: 46, leastOnPhone: 46, glyph: 9.4 },
}
const tabPixels = { oneLine: 32, eachMore: 18 }
const mostLines = 3

/**
 * Where everything on a level rail stands for a rail of this width. Tabs that would touch move apart, the beam drops and
 * hairlines lead to the true places; on a phone from seven levels on they stand on both sides of the beam in turn. The
 * options of a choice share the room evenly.
 */
export function railLayout(
  levels: readonly Level[],
  letters: ReadonlyMap<string, string> | undefined,
  size: RailSize,
  railPixels: number,
): RailLayout {
  const axis = levelAxis(levels)
  const phone = railPixels < phonePixels
  const { least, leastOnPhone, glyph } = sizes[size]
  const twoSided = size === 'plain' && phone && axis.ordered && levels.length >= twoSidedFrom
  const room = railPixels / Math.max(1, levels.length)
  const short = new Map(levels.map((level) => [level.id, level.shortLabel]))
  const faces = axis.positions.map((position) => {
    const letter = letters?.get(position.levelId)
    const words = axis.ordered
      ? levelShort(position)
      : ((phone || levels.length > 5 ? short.get(position.levelId) : undefined) ?? position.label)
    const glyphs =
      words.length + (letter ? letter.length + 0.8 : 0) + (twoSided && position.control ? 1.5 : 0)
    const wanted = Math.max(phone ? leastOnPhone : least, glyphs * glyph + 14)
    const widthPixels = axis.ordered ? wanted : Math.min(wanted + 20, room - (phone ? 8 : 24))
    return { ...position, words, letter, widthPixels }
  })
  const sideOf = (index: number) => (twoSided && index % 2 === 1 ? 'below' : 'above')
  const placed = new Map<string, number>()
  const widths = new Map<string, number>()
  for (const side of ['above', 'below'] as const) {
    const onSide = narrowed(
      faces.filter((_, index) => sideOf(index) === side),
      railPixels,
    )
    for (const [index, left] of apartTabs(onSide, railPixels).entries()) {
      const face = onSide[index]
      if (!face) continue
      placed.set(face.levelId, left)
      widths.set(face.levelId, face.widthPixels)
    }
  }
  const written = size === 'plain' && !axis.ordered ? optionFaces(faces, glyph) : null
  const tabs = faces.map((face, index): PlacedTab => {
    const { levelId, words, letter, control } = face
    return {
      ...{ levelId, words, letter, control, side: sideOf(index) },
      lines: written?.lines[index] ?? [words],
      numbered: written?.key[index] ?? null,
      placePixels: face.at * railPixels,
      widthPixels: widths.get(levelId) ?? face.widthPixels,
      leftPixels: placed.get(levelId) ?? 0,
    }
  })
  const moved = tabs.some(
    (tab) => Math.abs(tab.leftPixels + tab.widthPixels / 2 - tab.placePixels) > 1,
  )
  const lines = axis.ordered ? 1 : Math.max(1, ...tabs.map((tab) => tab.lines.length))
  return {
    axis,
    tabs,
    twoSided,
    gapPixels: twoSided ? 12 : moved && axis.ordered ? 10 : 0,
    tabPixels: tabPixels.oneLine + (lines - 1) * tabPixels.eachMore,
  }
}

/** What the options of a choice wear in tabs of their widths; a letter stands before the first line and takes its room from all. */
function optionFaces(
  faces: readonly { words: string; letter: string | undefined; widthPixels: number }[],
  glyph: number,
): LevelFaces {
  const glyphs = faces.map(
    ({ letter, widthPixels }) => (widthPixels - 12) / glyph - (letter ? letter.length + 1 : 0),
  )
  const options = faces.map(({ words }) => ({ letter: undefined, name: words }))
  return levelFaces(options, Math.min(...glyphs), mostLines)
}

/** The tabs of one side, each made narrower by the same share when together they are wider than the rail. */
function narrowed<Face extends { widthPixels: number }>(faces: Face[], railPixels: number): Face[] {
  const gaps = (faces.length - 1) * 3
  const sum = faces.reduce((total, face) => total + face.widthPixels, 0)
  if (sum + gaps <= railPixels) return faces
  const share = Math.max(0, railPixels - gaps) / sum
  return faces.map((face) => ({ ...face, widthPixels: face.widthPixels * share }))
}
