import { differenceText } from '@/core/wording/findings/difference-text.ts'
import type { PairsBlock } from './report-block.ts'
import { element, label, line } from './svg-text.ts'

const width = 680
const left = 190
const right = 16
const rowHeight = 20
const top = 22

/** Differences as a picture of intervals: one row a pair, the margin shaded, zero ruled, filled dots where zero is left out. */
export function pairsSvg({ picture, alt, unit }: PairsBlock): string {
  const { axis, rows, margin } = picture
  const bottom = top + rows.length * rowHeight
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
    const y = top + index * rowHeight + rowHeight / 2
    return (
      label(`${row.a} → ${row.b}`, 0, y + 4, { class: 'name' }) +
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
  const ticks = axis.ticks.map(
    (tick) =>
      line(x(tick.value), bottom, x(tick.value), bottom + 4, { class: 'ink' }) +
      label(tick.label, x(tick.value), bottom + 17, { 'text-anchor': 'middle', class: 'soft' }),
  )
  return element(
    'svg',
    { viewBox: `0 0 ${width} ${bottom + 36}`, role: 'img', 'aria-label': alt, class: 'chart' },
    [
      shade,
      line(x(0), top - 6, x(0), bottom, { class: 'ink' }),
      drawn.join(''),
      line(left, bottom, width - right, bottom, { class: 'rule' }),
      ticks.join(''),
      label(unit, width - right, bottom + 32, { 'text-anchor': 'end', class: 'soft' }),
    ].join(''),
  )
}
