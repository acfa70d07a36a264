import { dotPlaces } from '@/core/figure/dot-places.ts'
import { wordsInLines } from '@/core/figure/words-in-lines.ts'
import { plainNumber } from '@/core/units/number-text.ts'
import { fillOf, patternDefinition } from './pattern-svg.ts'
import { railSvg } from './rail-svg.ts'
import type { ChartBlock } from './report-block.ts'
import { element, label, line, path } from './svg-text.ts'

const width = 680
const leastLeft = 34
const right = 76
const railTop = 8
const plotHeight = 220
const glyphPixels = 5.9
const linePixels = 14
const widestDots = 64
const largestDot = 3.6

/**
 * A response chart as one SVG picture: the rail on top, then all points, the curve with its band, means with their
 * intervals as bold crosses, the best's interval along the foot, control and margin. `id` keeps its pattern names apart
 * from those of other charts on the page.
 */
export function chartSvg(block: ChartBlock, id: string): string {
  const { chart } = block
  const longestTick = Math.max(0, ...chart.y.ticks.map((tick) => tick.label.length))
  const left = Math.max(leastLeft, longestTick * glyphPixels + 10)
  const plotWidth = width - left - right
  const x = (at: number) => left + at * plotWidth
  const patternId = (levelId: string) =>
    `${id}-${chart.x.positions.findIndex((position) => position.levelId === levelId)}`
  const rail = railSvg({
    ...{ axis: chart.x, paints: block.paints, letters: block.letters, title: block.xTitle },
    ...{ left, width: plotWidth, top: railTop, patternId },
  })
  const nameLines = wordsInLines(block.yTitle, (width - left) / glyphPixels)
  const nameEnd = left + Math.max(...nameLines.map((text) => text.length)) * glyphPixels
  const nameY = rail.bottom + (nameEnd + 8 > rail.titleFrom ? linePixels : 9)
  const top = nameY + 6 + (nameLines.length - 1) * linePixels
  const bottom = top + plotHeight
  const y = (value: number) =>
    bottom - ((value - chart.y.low) / (chart.y.high - chart.y.low)) * plotHeight
  const ends = { top, bottom }
  const height = chart.best ? bottom + 40 : bottom + 16
  const content = [
    element('title', {}, label(block.title, 0, 0).replace(/<\/?text[^>]*>/g, '')),
    definitions(block, patternId),
    rail.svg,
    grid(block, x, y),
    nameLines
      .map((text, index) => label(text, left, nameY + index * linePixels, { class: 'soft' }))
      .join(''),
    marginAndControl(block, x, y, ends),
    curve(block, x, y),
    points(block, x, y, patternId),
    means(block, x, y),
    best(block, x, bottom),
  ]
  return element(
    'svg',
    {
      viewBox: `0 0 ${width} ${height}`,
      role: 'img',
      'aria-label': block.alt,
      class: 'chart',
    },
    content.join(''),
  )
}

type Scale = (value: number) => number

function definitions(block: ChartBlock, patternId: (levelId: string) => string): string {
  const all = [...block.paints].map(([levelId, paint]) =>
    patternDefinition(patternId(levelId), paint),
  )
  return all.some((text) => text !== '') ? element('defs', {}, all.join('')) : ''
}

function grid({ chart }: ChartBlock, x: Scale, y: Scale): string {
  const lines = chart.y.ticks.map(
    (tick) =>
      line(x(0), y(tick.value), x(1), y(tick.value), { class: 'rule' }) +
      label(tick.label, x(0) - 6, y(tick.value) + 4, { 'text-anchor': 'end', class: 'soft' }),
  )
  return lines.join('')
}

function marginAndControl(
  { chart }: ChartBlock,
  x: Scale,
  y: Scale,
  { top, bottom }: { top: number; bottom: number },
): string {
  const { control, margin } = chart
  const parts: string[] = []
  if (control?.estimate != null)
    parts.push(line(x(0), y(control.estimate), x(1), y(control.estimate), { class: 'control' }))
  if (margin) {
    const at = x(1) + 8
    const inside = (value: number) => Math.min(bottom, Math.max(top, y(value)))
    parts.push(
      path2([
        [at + 4, inside(margin.high)],
        [at, inside(margin.high)],
        [at, inside(margin.low)],
        [at + 4, inside(margin.low)],
      ]),
      label(
        `± ${plainNumber((margin.high - margin.low) / 2)} margin`,
        at + 6,
        (inside(margin.high) + inside(margin.low)) / 2 + 4,
        {
          class: 'soft',
        },
      ),
    )
  }
  return parts.join('')
}

function path2(points: [number, number][]): string {
  return element('path', { d: path(points), class: 'bracket' })
}

function curve({ chart }: ChartBlock, x: Scale, y: Scale): string {
  if (chart.curve.length === 0) return ''
  const banded = chart.curve.filter((point) => point.low !== null && point.high !== null)
  const upper = banded.map((point): [number, number] => [
    x(point.at),
    y(clamp(chart.y, point.high ?? 0)),
  ])
  const lower = banded.map((point): [number, number] => [
    x(point.at),
    y(clamp(chart.y, point.low ?? 0)),
  ])
  const band =
    banded.length > 1
      ? element('path', { d: path([...upper, ...lower.toReversed()], true), class: 'band' })
      : ''
  const fit = chart.curve.map((point): [number, number] => [
    x(point.at),
    y(clamp(chart.y, point.fit)),
  ])
  return band + element('path', { d: path(fit), class: 'curve' })
}

function clamp(axis: { low: number; high: number }, value: number): number {
  return Math.min(axis.high, Math.max(axis.low, value))
}

/** Every value as a dot that can be counted, laid beside its level's place as on the screen. */
function points(
  { chart, paints }: ChartBlock,
  x: Scale,
  y: Scale,
  patternId: (id: string) => string,
): string {
  const levelAt = new Map(chart.x.positions.map(({ levelId, at }) => [levelId, x(at)]))
  const places = [...levelAt.values()].toSorted((a, b) => a - b)
  const gaps = places.slice(1).map((at, index) => at - (places[index] ?? 0))
  const { offsets, radiusPixels } = dotPlaces(
    chart.points.map(({ levelId, value }) => ({ levelId, heightPixels: y(value) })),
    Math.min(widestDots, ...gaps.map((gap) => gap * 0.75)),
    Math.abs(y(chart.y.low + 1) - y(chart.y.low)),
  )
  return chart.points
    .map(({ levelId, value }, index) => {
      const paint = paints.get(levelId)
      const { across = 0, up = 0 } = offsets[index] ?? {}
      return element('circle', {
        cx: (levelAt.get(levelId) ?? 0) + across,
        cy: y(value) - up,
        r: Math.min(largestDot, radiusPixels),
        fill: paint ? fillOf(patternId(levelId), paint) : '#888888',
        class: 'point',
      })
    })
    .join('')
}

function means({ chart }: ChartBlock, x: Scale, y: Scale): string {
  return chart.means
    .map(({ at, estimate, low, high }) => {
      const across = line(x(at) - 10, y(estimate), x(at) + 10, y(estimate), { class: 'mean' })
      const upright =
        low === null || high === null
          ? ''
          : line(x(at), y(clamp(chart.y, low)), x(at), y(clamp(chart.y, high)), {
              class: 'mean-interval',
            })
      return upright + across
    })
    .join('')
}

function best({ chart, bestText }: ChartBlock, x: Scale, bottom: number): string {
  if (!chart.best) return ''
  const { at, fromAt, toAt, openLow, openHigh } = chart.best
  const y = bottom + 18
  const end = (place: number, open: boolean, away: number) =>
    open
      ? element('path', {
          d: `M${x(place) - away * 6} ${y - 4}L${x(place)} ${y}L${x(place) - away * 6} ${y + 4}`,
          class: 'best',
        })
      : line(x(place), y - 4, x(place), y + 4, { class: 'best' })
  const room = width - x(toAt) - 10
  const textLeft = toAt < 0.55 && (bestText ?? '').length * glyphPixels < room
  return [
    line(x(fromAt), y, x(toAt), y, { class: 'best' }),
    end(fromAt, openLow, -1),
    end(toAt, openHigh, 1),
    element('circle', { cx: x(at), cy: y, r: 4, class: 'best-dot' }),
    bestText === null
      ? ''
      : label(bestText, textLeft ? x(toAt) + 10 : x(0), textLeft ? y + 4 : y + 18, {
          class: 'soft',
        }),
  ].join('')
}
