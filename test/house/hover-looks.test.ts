import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'

/** What is left of a style sheet once everything within `@media (hover: hover)` is taken out. */
function withoutHoverMedia(css: string): string {
  const start = css.indexOf('@media (hover: hover)')
  if (start < 0) return css
  let depth = 0
  for (let at = css.indexOf('{', start); at < css.length; at++) {
    if (css[at] === '{') depth++
    if (css[at] === '}') depth--
    if (depth === 0) return css.slice(0, start) + withoutHoverMedia(css.slice(at + 1))
  }
  return css.slice(0, start)
}

test('the look of being pointed at is shown only where the device can point: a touch leaves it behind', () => {
  const left: string[] = []
  let pointedAt = 0
  const sheets = readdirSync('src', { recursive: true, encoding: 'utf8' })
  for (const file of sheets.filter((name) => name.endsWith('.css'))) {
    const css = readFileSync(join('src', file), 'utf8')
    pointedAt += css.split(':hover').length - 1
    if (withoutHoverMedia(css).includes(':hover')) left.push(file)
  }
  expect(left).toEqual([])
  expect(pointedAt).toBeGreaterThan(10)
})
