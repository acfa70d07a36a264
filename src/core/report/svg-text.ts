import { escapeHtml } from './escape.ts'

/** An SVG element as text; numbers are rounded to a hundredth of a pixel, children are SVG already. */
export function element(
  name: string,
  attributes: Record<string, string | number>,
  children = '',
): string {
  const written = Object.entries(attributes)
    .map(([key, value]) => ` ${key}="${escapeHtml(attributeText(value))}"`)
    .join('')
  return children === '' ? `<${name}${written}/>` : `<${name}${written}>${children}</${name}>`
}

/** A text element; what a person typed is escaped here. */
export function label(
  text: string,
  x: number,
  y: number,
  attributes: Record<string, string | number> = {},
): string {
  return element('text', { x, y, ...attributes }, escapeHtml(text))
}

/** A straight line from one point to another, in pixels. */
export function line(
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  attributes: Record<string, string | number> = {},
): string {
  return element('line', { x1, y1, x2, y2, ...attributes })
}

/** A path through points, closed or open. */
export function path(points: readonly (readonly [number, number])[], closed = false): string {
  const steps = points.map(([x, y], index) => `${index ? 'L' : 'M'}${hundredth(x)} ${hundredth(y)}`)
  return steps.join('') + (closed ? 'Z' : '')
}

function attributeText(value: string | number): string {
  return typeof value === 'number' ? String(hundredth(value)) : value
}

function hundredth(value: number): number {
  return Math.round(value * 100) / 100
}
