import { expect, it } from 'vitest'
import { triedDays } from './tried-days.ts'

/** A tenth of the days that `npm run speed -- days` tries and prints. */
it('every plan of 300 seeded days holds what it promises', () => {
  const { plans, proved, gaveUp, faults } = triedDays(1, 300)
  expect(faults).toEqual([])
  expect(plans).toBeGreaterThan(180)
  expect(gaveUp).toBeLessThan(3)
  expect(proved / plans).toBeGreaterThan(0.85)
})
