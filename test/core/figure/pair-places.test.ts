import fc from 'fast-check'
import { expect, test } from 'vitest'
import { pairPicture } from '@/core/figure/pair-picture.ts'
import { pairName, pairPlaces } from '@/core/figure/pair-places.ts'
import { wordsInLines } from '@/core/figure/words-in-lines.ts'

const drawing = {
  ...{ widthPixels: 328, glyphPixels: 7, linePixels: 17, rowPixels: 30 },
  widestNamesPixels: 110,
}
const rowsOf = (pairs: [string, string][]) =>
  pairPicture(
    pairs.map(([a, b]) => ({ a, b, difference: 1, low: 0, high: 2 })),
    null,
  ).rows

test('a name is broken between words, and within a word that no line holds', () => {
  expect(wordsInLines('strong white flour', 12)).toEqual(['strong white', 'flour'])
  expect(wordsInLines('Weizenvollkornmehl 1600', 10)).toEqual(['Weizenvoll', 'kornmehl', '1600'])
  expect(wordsInLines('72', 0.4)).toEqual(['7', '2'])
  expect(wordsInLines('', 8)).toEqual([''])
  expect(wordsInLines('steel or stone', Number.POSITIVE_INFINITY)).toEqual(['steel or stone'])
})

test('no line is longer than asked and no glyph of a name is lost, whatever it is', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: 'grapheme', maxLength: 90 }),
      fc.integer({ min: 1, max: 60 }),
      (name, most) => {
        const lines = wordsInLines(name, most)
        for (const line of lines) expect([...line].length).toBeLessThanOrEqual(most)
        expect(lines.join('').replaceAll(/\s/g, '')).toBe(name.replaceAll(/\s/g, ''))
      },
    ),
  )
})

test('names that fit stand beside their intervals, one row under another', () => {
  const { namesAbove, places, heightPixels } = pairPlaces(
    rowsOf([
      ['70', '74'],
      ['70', '78'],
    ]),
    drawing,
  )
  expect(namesAbove).toBe(false)
  expect(places.map(({ nameLines }) => nameLines)).toEqual([['70 → 74'], ['70 → 78']])
  expect(places.map(({ middlePixels }) => middlePixels)).toEqual([15, 45])
  expect(heightPixels).toBe(60)
})

test('names of forty letters stand whole over their intervals, and no row reaches into the next', () => {
  const [a, b] = [
    'Strong white flour of the hill mill, one',
    'Half wholemeal with its bran sieved once',
  ]
  const rows = rowsOf([
    [a, b],
    [b, a],
  ])
  const { namesAbove, places, heightPixels } = pairPlaces(rows, drawing)
  expect(namesAbove).toBe(true)
  // 328 pixels hold 46 glyphs; each name of 83 takes two lines.
  expect(places.map(({ nameLines }) => nameLines.length)).toEqual([2, 2])
  expect(places.map(({ nameLines }) => nameLines.join(' '))).toEqual(rows.map(pairName))
  expect(places.map(({ topPixels }) => topPixels)).toEqual([0, 64])
  expect(places.map(({ middlePixels }) => middlePixels)).toEqual([49, 113])
  expect(heightPixels).toBe(128)
})
