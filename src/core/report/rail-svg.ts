import type { LevelAxis } from '@/core/figure/level-axis.ts'
import type { LevelPaint } from '@/core/figure/level-ramp.ts'
import { fillOf } from './pattern-svg.ts'
import { element, label, line } from './svg-text.ts'

export interface RailDrawing {
  axis: LevelAxis
  paints: ReadonlyMap<string, LevelPaint>
  letters: ReadonlyMap<string, string>
  title: string
  left: number
  width: number
  /** Where the rail's line runs; tabs stand on it. */
  y: number
  patternId: (levelId: string) => string
}

const tabHeight = 26
const footHeight = 7

/** The level rail in ink: a tab at each level's true place on a foot in the level's colour, ticks below, the usual marked. */
export function railSvg(rail: RailDrawing): string {
  const { axis, left, width, y } = rail
  const x = (at: number) => left + at * width
  const room = Math.min(
    64,
    ...axis.positions
      .slice(1)
      .map(({ at }, index) => (at - (axis.positions[index]?.at ?? 0)) * width - 3),
  )
  const tabs = axis.positions.map((position) => {
    const paint = rail.paints.get(position.levelId)
    const letter = rail.letters.get(position.levelId)
    const text = letter === undefined ? position.label : `${letter} ${position.label}`
    const wanted = Math.max(30, text.length * 7.2 + 10)
    const fits = wanted <= room
    const tabWidth = Math.max(8, fits ? wanted : room)
    const shown = fits ? text : position.label.slice(0, Math.max(1, Math.floor((room - 4) / 7)))
    const body = { x: x(position.at) - tabWidth / 2, width: tabWidth }
    return (
      element('rect', { ...body, y: y - tabHeight, height: tabHeight, rx: 2, class: 'tab' }) +
      element('rect', {
        ...body,
        y: y - footHeight,
        height: footHeight,
        fill: paint ? fillOf(rail.patternId(position.levelId), paint) : '#ffffff',
        class: 'foot',
      }) +
      label(shown, x(position.at), y - footHeight - 5, {
        'text-anchor': 'middle',
        class: 'tab-text',
      }) +
      (position.control ? usualMark(x(position.at), y) : '')
    )
  })
  const ticks = axis.ticks.map(({ at }) => line(x(at), y, x(at), y + 4, { class: 'ink' }))
  return [
    tabs.join(''),
    line(left, y, left + width, y, { class: 'ink' }),
    ticks.join(''),
    label(rail.title, left + width, y + 17, { 'text-anchor': 'end', class: 'soft' }),
  ].join('')
}

function usualMark(x: number, y: number): string {
  return (
    element('path', { d: `M${x - 4} ${y + 13}h8l-4 -7z`, class: 'mark' }) +
    label('usual', x + 7, y + 17, { class: 'soft' })
  )
}
