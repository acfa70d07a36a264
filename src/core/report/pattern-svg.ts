import type { LevelPaint, LevelPattern } from '@/core/figure/level-ramp.ts'
import { element } from './svg-text.ts'

const strokes: Record<LevelPattern, string> = {
  plain: '',
  diagonal: 'M-2 8L8 -2M0 12L12 0M4 14L14 4',
  'back-diagonal': 'M-2 2L8 12M0 -2L12 10M4 -4L14 6',
  across: 'M0 3H10M0 8H10',
  upright: 'M3 0V10M8 0V10',
  grid: 'M0 5H10M5 0V10',
  dots: 'M2.5 2.5h.01M7.5 7.5h.01',
  rings: 'M5 2.5a2.5 2.5 0 1 0 .01 0',
}

/** The definition of an option's pattern; the ramp and the plain option need none and give an empty text. */
export function patternDefinition(id: string, paint: LevelPaint): string {
  if (paint.pattern === null || paint.pattern === 'plain') return ''
  const width = paint.pattern === 'dots' ? 3 : 1.4
  return element(
    'pattern',
    { id, width: 10, height: 10, patternUnits: 'userSpaceOnUse' },
    element('rect', { width: 10, height: 10, fill: paint.fill }) +
      element('path', {
        d: strokes[paint.pattern],
        stroke: 'currentColor',
        'stroke-width': width,
        'stroke-linecap': 'round',
        fill: 'none',
      }),
  )
}

/** What to fill with: the pattern's id where there is one, else the plain colour. */
export function fillOf(id: string, paint: LevelPaint): string {
  return paint.pattern === null || paint.pattern === 'plain' ? paint.fill : `url(#${id})`
}
