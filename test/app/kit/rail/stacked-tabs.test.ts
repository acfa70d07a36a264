import fc from 'fast-check'
import { expect, test } from 'vitest'
import { stackedTabs } from '@/app/kit/rail/stacked-tabs.ts'

test('tabs with room stand on the axis, centred over their place', () => {
  // 40 px wide at 0.25 and 0.75 of 400 px: left ends at 100 - 20 and 300 - 20.
  expect(
    stackedTabs(
      [
        { at: 0.25, widthPixels: 40 },
        { at: 0.75, widthPixels: 40 },
      ],
      400,
    ),
  ).toEqual([
    { leftPixels: 80, row: 0 },
    { leftPixels: 280, row: 0 },
  ])
})

test('a tab that would overlap goes up a row', () => {
  const rows = stackedTabs(
    [0.5, 0.52, 0.54].map((at) => ({ at, widthPixels: 44 })),
    360,
  ).map((tab) => tab.row)
  expect(rows).toEqual([0, 1, 2])
})

test('no two tabs of a row overlap and none leaves the rail', () => {
  const places = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 12 })
  fc.assert(
    fc.property(places, fc.integer({ min: 120, max: 1200 }), (ats, railPixels) => {
      const tabs = ats.toSorted((a, b) => a - b).map((at) => ({ at, widthPixels: 52 }))
      const stacked = stackedTabs(tabs, railPixels)
      for (const [index, tab] of stacked.entries()) {
        expect(tab.leftPixels).toBeGreaterThanOrEqual(0)
        expect(tab.leftPixels + 52).toBeLessThanOrEqual(railPixels)
        for (const other of stacked.slice(index + 1))
          if (other.row === tab.row)
            expect(Math.abs(other.leftPixels - tab.leftPixels)).toBeGreaterThanOrEqual(52)
      }
    }),
  )
})
