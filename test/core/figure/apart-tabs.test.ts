import fc from 'fast-check'
import { expect, test } from 'vitest'
import { apartTabs } from '@/core/figure/apart-tabs.ts'

test('tabs with room stand centred over their place', () => {
  // 40 px wide at 0.25 and 0.75 of 400 px: left ends at 100 - 20 and 300 - 20.
  const tabs = [0.25, 0.75].map((at) => ({ at, widthPixels: 40 }))
  expect(apartTabs(tabs, 400)).toEqual([80, 280])
})

test('tabs that would touch move apart evenly about their places', () => {
  // 44 px wide and 3 between at 0.5 three times of 360 px: 180 - 22 in the middle, 47 to either side.
  const tabs = [0.5, 0.5, 0.5].map((at) => ({ at, widthPixels: 44 }))
  expect(apartTabs(tabs, 360)).toEqual([111, 158, 205])
})

test('no two tabs overlap and none leaves the rail while they fit it', () => {
  const places = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 12 })
  fc.assert(
    fc.property(places, fc.integer({ min: 700, max: 1200 }), (ats, railPixels) => {
      const tabs = ats.toSorted((a, b) => a - b).map((at) => ({ at, widthPixels: 52 }))
      const lefts = apartTabs(tabs, railPixels)
      for (const [index, left] of lefts.entries()) {
        expect(left).toBeGreaterThanOrEqual(0)
        expect(left + 52).toBeLessThanOrEqual(railPixels + 1e-6)
        const next = lefts[index + 1]
        if (next !== undefined) expect(next - left).toBeGreaterThanOrEqual(55 - 1e-6)
      }
    }),
  )
})
