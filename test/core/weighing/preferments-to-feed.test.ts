import { expect, it } from 'vitest'
import { prefermentsToFeed } from '@/core/weighing/preferments-to-feed.ts'
import { beforeTheDay } from '@/core/wording/plan/clock-day-text.ts'
import { madePlan } from '../made-plan.ts'

/** Four doughs of 400 g of flour, a fifth of it in a poolish of equal parts; `clings`: what stays in its jar, g. */
function withPoolish(clings: number) {
  const { formula, ...plan } = madePlan()
  const poolish = {
    ...{ id: 'poolish', name: 'Poolish', kind: 'poolish' as const, flourSharePercent: 20 },
    ...{ celsius: 21, clingsGrams: clings },
    parts: [
      { ingredientId: 'flour', percent: 100 },
      { ingredientId: 'water', percent: 100 },
    ],
  }
  return { ...plan, formula: { ...formula, preferments: [poolish] } }
}

it('feeds a preferment once for all doughs, with what clings to its jar', () => {
  // 80 g of flour and 80 g of water a dough, four doughs.
  expect(prefermentsToFeed(withPoolish(0))).toMatchObject([
    { name: 'Poolish', rows: [{ grams: 320 }, { grams: 320 }], totalGrams: 640 },
  ])
  // 16 g of 160 g cling, a tenth.
  const [fed] = prefermentsToFeed(withPoolish(16))
  expect(fed?.totalGrams).toBeCloseTo(704, 9)
  expect(fed?.rows[0]?.grams).toBeCloseTo(352, 9)
  expect(prefermentsToFeed(madePlan())).toEqual([])
})

it('before the day stands what is fed, and who helps from when to when', () => {
  const at = Date.UTC(2026, 11, 5, 17)
  const hour = 3_600_000
  const plan = {
    ...withPoolish(0),
    day: {
      fixed: { what: 'eat' as const, at },
      helpers: [{ fromAt: at - 3 * hour, untilAt: at - hour }],
    },
  }
  const lines = beforeTheDay(plan, 4)
  expect(lines).toContain(
    'Poolish, fed for all doughs: 320 g Bread flour and 320 g Water, 640 g in all.',
  )
  // 17:00 UTC is 18:00 in Zurich in December; the helper comes three hours before and leaves one before.
  expect(lines.slice(-2)).toEqual([
    'One pair of hands all day, and who helps by the hour:',
    'Helper 1: Saturday, 5 December, 15:00 to 17:00.',
  ])
  expect(beforeTheDay(madePlan(), 4).at(-1)).toBe('Nobody helps: one pair of hands does it all.')
})
