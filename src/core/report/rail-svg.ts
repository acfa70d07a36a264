import type { LevelAxis } from '@/core/figure/level-axis.ts'
import type { LevelPaint } from '@/core/figure/level-ramp.ts'
import { wordsInLines } from '@/core/figure/words-in-lines.ts'
import { fillOf } from './pattern-svg.ts'
import { type RailTabPlace, railPlaces } from './rail-places.ts'
import { element, label, line } from './svg-text.ts'

export interface RailDrawing {
  axis: LevelAxis
  paints: ReadonlyMap<string, LevelPaint>
  letters: ReadonlyMap<string, string>
  title: string
  left: number
  width: number
  /** Where the tabs begin. */
  top: number
  patternId: (levelId: string) => string
}

const footHeight = 7
const linePixels = 14
const softGlyphPixels = 5.9
const usualPixels = 46

/**
 * The level rail in ink: a tab at each level's true place on a foot in the level's colour, on paper with strokes instead, ticks
 * below, the usual marked, the factor's name under it. `bottom` is the base of its last line of words, and `titleFrom` where on
 * it the name begins.
 */
export function railSvg(rail: RailDrawing): { svg: string; bottom: number; titleFrom: number } {
  const { axis, left, width, top } = rail
  const { tabs, tabHeight, gapPixels, key } = railPlaces(axis, rail.letters, width)
  const y = top + tabHeight + gapPixels
  const usual = tabs.find(({ control }) => control)
  const titlePixels = rail.title.length * softGlyphPixels
  const usualEnd = usual ? usual.placePixels + usualPixels : 0
  const titleDown = usual && usualEnd > width - titlePixels ? linePixels : 0
  const titleLines = wordsInLines(rail.title, width / softGlyphPixels)
  const titleY = y + 17 + titleDown
  const keyLines = key.flatMap((text) => wordsInLines(text, width / softGlyphPixels))
  const keyY = titleY + titleLines.length * linePixels
  const drawn = [
    tabs.map((tab) => tabSvg(rail, tab, y - gapPixels, tabHeight)).join(''),
    line(left, y, left + width, y, { class: 'ink' }),
    gapPixels === 0 ? '' : tabs.map((tab) => hairline(left, tab, y, gapPixels)).join(''),
    axis.ticks
      .map(({ at }) => line(left + at * width, y, left + at * width, y + 4, { class: 'ink' }))
      .join(''),
    usual ? usualMark(left + usual.placePixels, y) : '',
    titleLines
      .map((text, index) =>
        label(text, left + width, titleY + index * linePixels, {
          'text-anchor': 'end',
          class: 'soft',
        }),
      )
      .join(''),
    keyLines
      .map((text, index) => label(text, left, keyY + index * linePixels, { class: 'soft' }))
      .join(''),
  ]
  return {
    svg: drawn.join(''),
    bottom: titleY + (titleLines.length - 1 + keyLines.length) * linePixels,
    titleFrom: keyLines.length > 0 ? left : left + Math.max(0, width - titlePixels),
  }
}

function tabSvg(rail: RailDrawing, tab: RailTabPlace, foot: number, tabHeight: number): string {
  const { levelId, lines, tabPixels, widthPixels } = tab
  const paint = rail.paints.get(levelId)
  const levels = [...rail.paints.keys()]
  const ramped = (paint?.pattern ?? null) === null
  const middle = rail.left + tabPixels
  const body = { x: middle - widthPixels / 2, width: widthPixels }
  const first = foot - footHeight - 5 - (lines.length - 1) * linePixels
  return (
    element('rect', { ...body, y: foot - tabHeight, height: tabHeight, rx: 2, class: 'tab' }) +
    element('rect', {
      ...body,
      y: foot - footHeight,
      height: footHeight,
      fill: paint ? fillOf(rail.patternId(levelId), paint) : '#ffffff',
      class: ramped ? 'foot' : 'foot patterned',
    }) +
    (ramped ? strokes(body.x, foot, widthPixels, levels.indexOf(levelId) + 1) : '') +
    lines
      .map((text, index) =>
        label(text, middle, first + index * linePixels, {
          'text-anchor': 'middle',
          class: 'tab-text',
        }),
      )
      .join('')
  )
}

/** What tells a level's foot where there is no colour: so many strokes as its place among the levels, one for the lowest. */
function strokes(left: number, foot: number, width: number, count: number): string {
  const apart = Math.min(4, (width - 4) / count)
  const first = left + (width - (count - 1) * apart) / 2
  const each = Array.from(
    { length: count },
    (_, index) => `M${(first + index * apart).toFixed(1)} ${foot - footHeight}v${footHeight}`,
  )
  return element('path', { d: each.join(''), class: 'strokes' })
}

const hairline = (left: number, tab: RailTabPlace, y: number, gapPixels: number) =>
  line(left + tab.tabPixels, y - gapPixels, left + tab.placePixels, y, { class: 'ink' })

function usualMark(x: number, y: number): string {
  return (
    element('path', { d: `M${x - 4} ${y + 13}h8l-4 -7z`, class: 'mark' }) +
    label('usual', x + 7, y + 17, { class: 'soft' })
  )
}
