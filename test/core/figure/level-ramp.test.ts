import {
  type Color,
  converter,
  differenceCiede2000,
  filterDeficiencyDeuter,
  filterDeficiencyProt,
  filterDeficiencyTrit,
  filterGrayscale,
} from 'culori'
import { expect, test } from 'vitest'
import { choicePaint, rampPaint } from '@/core/figure/level-ramp.ts'

const oklch = converter('oklch')
const rgb = converter('rgb')
const appearances = ['light', 'dark'] as const

test.each(appearances)('the %s ramp always darkens', (appearance) => {
  for (let count = 2; count <= 12; count += 1) {
    const lightness = Array.from(
      { length: count },
      (_, index) => oklch(rampPaint(index, count, appearance).fill)?.l ?? 0,
    )
    const steps = lightness.slice(1).map((value, index) => (lightness[index] ?? 0) - value)
    expect(Math.min(...steps)).toBeGreaterThan(0)
  }
})

// Dichromats as Machado, Oliveira and Fernandes 2009 model them, and grey; differences as CIE 142-2001: both by culori.
const eyes: Record<string, (colour: string) => Color | undefined> = {
  normal: rgb,
  protan: (colour) => filterDeficiencyProt(1)(rgb(colour) ?? colourless(colour)),
  deutan: (colour) => filterDeficiencyDeuter(1)(rgb(colour) ?? colourless(colour)),
  tritan: (colour) => filterDeficiencyTrit(1)(rgb(colour) ?? colourless(colour)),
  grey: (colour) => filterGrayscale(1)(rgb(colour) ?? colourless(colour)),
}
function colourless(colour: string): never {
  throw new Error(`no colour: ${colour}`)
}
const difference = differenceCiede2000()

/** The least CIEDE2000 difference between neighbours of a ramp of this many levels, over every eye. */
function leastBetweenNeighbours(count: number, appearance: 'light' | 'dark'): number {
  const fills = Array.from(
    { length: count },
    (_, index) => rampPaint(index, count, appearance).fill,
  )
  return Math.min(
    ...Object.values(eyes).flatMap((seen) =>
      fills.slice(1).map((fill, index) => {
        const here = seen(fill)
        const before = seen(fills[index] ?? '')
        if (!here || !before) throw new Error('a paint that is no colour')
        return difference(here, before)
      }),
    ),
  )
}

// Common practice of graphic work: about 10 is told apart at a glance, under 5 only side by side.
test.each([
  [5, 10.4, 10.6],
  [6, 8.1, 7.4],
  [7, 6.2, 6.7],
])(
  'neighbours of %i levels differ by at least %f light and %f dark, to any eye',
  (count, light, dark) => {
    expect(leastBetweenNeighbours(count, 'light')).toBeGreaterThan(light - 0.05)
    expect(leastBetweenNeighbours(count, 'dark')).toBeGreaterThan(dark - 0.05)
  },
)

test('options of a choice share one fill and differ by hatch', () => {
  const paints = [0, 1, 2, 3].map((index) => choicePaint(index, 'light'))
  expect(new Set(paints.map((paint) => paint.fill)).size).toBe(1)
  expect(new Set(paints.map((paint) => paint.pattern)).size).toBe(4)
})
