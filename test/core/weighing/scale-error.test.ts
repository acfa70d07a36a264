import { expect, test } from 'vitest'
import type { Scale } from '@/core/kitchen/kitchen-record.ts'
import { weigh } from '@/core/weighing/weigh.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { aPlan, levelsOf, plainFormula, scale } from '../trial/a-plan.ts'

const off = (errors: Pick<Scale, 'errorGrams' | 'errorPercent'>): Scale => ({
  ...scale(1, 5000),
  ...errors,
})
const plan = aPlan({ formula: plainFormula, kitchenIds: [], levels: levelsOf([60, 62], 60) })

test('a stated error joins the rounding in quadrature', () => {
  // 300 g, step 1 g: 1/√6 = 0.40825; off by 2 g and 0.5 % (1.5 g): √(2² + 1.5²)/√3 = 2.5/√3 = 1.44338;
  // together √(0.40825² + 1.44338²) = 1.5, so 0.5 % of 300 g
  const one = weigh(300, [off({ errorGrams: 2, errorPercent: 0.5 })])
  expect(one.uncertaintyGrams).toBeCloseTo(0.40825, 5)
  expect(one.sharedUncertaintyGrams).toBeCloseTo(1.44338, 5)
  expect(one.relativeUncertainty).toBeCloseTo(0.005, 6)
})

test('what a scale is off by is shared: the levels stay as far apart as without it', () => {
  const [plain, known] = [{}, { errorGrams: 3, errorPercent: 1 }].map((errors) =>
    weighSheet(plan, [off(errors)]),
  )
  const [before, now] = [plain?.batches[0]?.achieved, known?.batches[0]?.achieved]
  expect(now?.ownUncertainty).toBe(before?.ownUncertainty)
  expect(known?.neighbours).toEqual(plain?.neighbours)
  // 600 g water on 1000 g flour, each off by up to 3 g: 3/√3 = 1.732 g; 0.1732 points from the water, 0.1039 from the flour
  // (60/1000 × 1.732), together 0.2020; with the rounding (0.40825 g: 0.0476) 0.2075. An error in proportion leaves a ratio be.
  expect(now?.uncertainty).toBeCloseTo(Math.hypot(0.202, 0.0476), 3)
})

test('flour and water on two scales feel an error in proportion', () => {
  // 1000 g flour on the big one, sure; 600 g water on a finer one off by 1 %: 1 %/√3 of 60 = 0.3464 points
  const fine: Scale = { ...scale(0.1, 800), errorPercent: 1 }
  const [batch] = weighSheet(plan, [scale(1, 5000), fine]).batches
  const rounding = batch?.achieved?.ownUncertainty ?? 0
  expect(batch?.achieved?.uncertainty).toBeCloseTo(Math.hypot(0.3464, rounding), 3)
})
