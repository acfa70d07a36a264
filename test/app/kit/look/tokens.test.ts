import { readFileSync } from 'node:fs'
import { clampRgb, converter, parse, wcagContrast } from 'culori'
import { expect, test } from 'vitest'
import { projectFiles } from '../../../house/project-files.ts'

const rgb = converter('rgb')
const sheet = readFileSync('src/app/kit/look/tokens.css', 'utf8')
const appearances = ['light', 'dark'] as const
type Appearance = (typeof appearances)[number]

/** The colours of one block of the sheet in one appearance, as a screen of sRGB shows them. */
function coloursOf(block: string, appearance: Appearance): Map<string, string> {
  const pairs = block.matchAll(/--([a-z-]+): light-dark\(((?:[^()]|\([^()]*\))+)\);/g)
  return new Map(
    Array.from(pairs, ([, name, both]) => {
      const [light, dark] = (both ?? '').split(/,(?![^(]*\))/).map((text) => text.trim())
      const colour = (appearance === 'light' ? light : dark) ?? ''
      if (!parse(colour)) throw new Error(`--${name} holds no colour: ${colour}`)
      return [name ?? '', colour]
    }),
  )
}

const start = sheet.slice(0, sheet.indexOf(':root[data-appearance'))
const more = sheet.slice(sheet.indexOf('@media (prefers-contrast'), sheet.indexOf('@media print'))

/** Contrast by WCAG 2 (relative luminance of sRGB), colours outside of sRGB clipped into it. */
function contrast(colours: ReadonlyMap<string, string>, text: string, ground: string): number {
  const seen = (name: string) => {
    const colour = rgb(colours.get(name) ?? '')
    if (!colour) throw new Error(`no colour --${name}`)
    return clampRgb(colour)
  }
  return wcagContrast(seen(text), seen(ground))
}

// WCAG 2.2: 1.4.3 asks 4.5 of text, 1.4.6 asks 7, 1.4.11 asks 3 of what must be seen.
const atBench = [
  ['ink', 'paper'],
  ['ink', 'raised'],
  ['soft', 'paper'],
  ['soft', 'raised'],
  ['accent', 'paper'],
  ['accent', 'raised'],
  ['accent-pressed', 'paper'],
  // The alarm's words stand on paper alone at the bench.
  ['alarm', 'paper'],
] as const
const elsewhere = [['alarm', 'raised']] as const
const seen = [
  ['edge', 'paper'],
  ['edge', 'raised'],
] as const

test.each(appearances)(
  '%s: text at the bench has 7, elsewhere 4.5, what must be seen 3',
  (appearance) => {
    const colours = coloursOf(start, appearance)
    for (const [text, ground] of atBench)
      expect(contrast(colours, text, ground), `${text} on ${ground}`).toBeGreaterThanOrEqual(7)
    for (const [text, ground] of elsewhere)
      expect(contrast(colours, text, ground), `${text} on ${ground}`).toBeGreaterThanOrEqual(4.5)
    for (const [line, ground] of seen)
      expect(contrast(colours, line, ground), `${line} on ${ground}`).toBeGreaterThanOrEqual(3)
  },
)

test.each(appearances)('%s, more contrast asked: every text has 7', (appearance) => {
  const colours = new Map([...coloursOf(start, appearance), ...coloursOf(more, appearance)])
  for (const [text, ground] of [...atBench, ...elsewhere])
    expect(contrast(colours, text, ground), `${text} on ${ground}`).toBeGreaterThanOrEqual(7)
})

test('what is filled with the accent is written on in paper', () => {
  expect(start).toContain('--on-accent: var(--paper);')
})

test('every custom property that a style asks for is given somewhere', () => {
  const sources = projectFiles().filter((path) => /^src\/app\/.*\.(css|tsx?)$/.test(path))
  const texts = sources.map((path) => readFileSync(path, 'utf8'))
  const given = new Set(
    texts.flatMap((text) =>
      Array.from(
        text.matchAll(/['"\s{](--[a-z][\w-]*)['"]?(?: as string\])?:/g),
        ([, name]) => name,
      ),
    ),
  )
  const missing = sources.flatMap((path, index) =>
    Array.from((texts[index] ?? '').matchAll(/var\((--[a-z][\w-]*)\)/g), ([, name]) => name)
      .filter((name) => !given.has(name))
      .map((name) => `${path}: ${name}`),
  )
  expect(missing).toEqual([])
})
