import { pairPlaces } from '@/core/figure/pair-places.ts'
import { wordsInLines } from '@/core/figure/words-in-lines.ts'
import { differenceText } from '@/core/wording/findings/difference-text.ts'
import type { PairsBlock } from './report-block.ts'
import { element, label, line } from './svg-text.ts'

const width = 680
const right = 16
const top = 22
const figurePixels = 60
const glyphPixels = 6.4
const linePixels = 15
/** Names beside the intervals, or over them where one is longer than that. */
const namesPixels = 130

/**
 * Differences as a picture of intervals: one row a pair, the margin shaded, zero ruled, filled dots where zero is left out. Names
 * that are long stand whole over their intervals.
 */
export function pairsSvg({ picture, alt, unit }: PairsBlock): string {
  const { axis, rows, margin } = picture
  const { namesAbove, places, heightPixels } = pairPlaces(rows, {
    ...{ widthPixels: width, glyphPixels, linePixels },
    ...{ rowPixels: 20, widestNamesPixels: namesPixels },
  })
  const left = figurePixels + (namesAbove ? 0 : namesPixels)
  const bottom = top + heightPixels
  const x = (value: number) =>
    left + ((value - axis.low) / (axis.high - axis.low)) * (width - left - right)
  const shade =
    margin === null
      ? ''
      : element('rect', {
          x: x(-margin),
          y: top - 6,
          width: x(margin) - x(-margin),
          height: bottom - top + 6,
          class: 'band',
        }) + label(`within the margin`, x(0), top - 10, { 'text-anchor': 'middle', class: 'soft' })
  const drawn = rows.map((row, index) => {
    const { nameLines = [], topPixels = 0, middlePixels = 0 } = places[index] ?? {}
    const y = top + middlePixels
    const nameY = namesAbove ? top + topPixels + 11 : y + 4
    return (
      nameLines
        .map((text, at) => label(text, 0, nameY + at * linePixels, { class: 'name' }))
        .join('') +
      label(differenceText(row.difference), left - 12, y + 4, {
        'text-anchor': 'end',
        class: 'figure',
      }) +
      line(x(row.low), y, x(row.high), y, { class: 'mean-interval' }) +
      element('circle', {
        cx: x(row.difference),
        cy: y,
        r: 4,
        class: row.shows === 'open' ? 'hollow' : 'best-dot',
      })
    )
  })
  const unitLines = wordsInLines(unit, (width - right) / glyphPixels)
  const ticks = axis.ticks.map(
    (tick) =>
      line(x(tick.value), bottom, x(tick.value), bottom + 4, { class: 'ink' }) +
      label(tick.label, x(tick.value), bottom + 17, { 'text-anchor': 'middle', class: 'soft' }),
  )
  return element(
    'svg',
    {
      viewBox: `0 0 ${width} ${bottom + 20 + unitLines.length * linePixels}`,
      role: 'img',
      'aria-label': alt,
      class: 'chart',
    },
    [
      shade,
      line(x(0), top - 6, x(0), bottom, { class: 'ink' }),
      drawn.join(''),
      line(left, bottom, width - right, bottom, { class: 'rule' }),
      ticks.join(''),
      unitLines
        .map((text, at) =>
          label(text, width - right, bottom + 32 + at * linePixels, {
            'text-anchor': 'end',
            class: 'soft',
          }),
        )
        .join(''),
    ].join(''),
  )
}
