import { expect, test } from 'vitest'
import { waterPlan } from '@/core/dough-temperature/water-plan.ts'
import type { Formula, Ingredient } from '@/core/formula/formula-record.ts'
import { benchShift } from '@/core/trial/bench-shift.ts'
import { levelRiders } from '@/core/trial/level-riders.ts'
import { planProblems } from '@/core/trial/plan-problems.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { aPlan, levelsOf, plainFormula, scale } from '../core/trial/a-plan.ts'

const seeds = Array.from({ length: 12 }, (_, index): Ingredient => {
  return { id: `s${index}`, name: `seed ${index}`, kind: 'other', percent: 1 }
})
const formula: Formula = {
  ingredients: [...plainFormula.ingredients, ...seeds],
  preferments: [
    {
      id: 'poolish',
      name: 'poolish',
      kind: 'poolish',
      flourSharePercent: 20,
      parts: [
        { ingredientId: 'flour', percent: 100 },
        { ingredientId: 'water', percent: 100 },
      ],
    },
  ],
  batchSize: { by: 'pieces', pieces: 4, pieceGrams: 250, lossPercent: 2 },
}

test('weights, water, riders and problems of 8 levels × 16 ingredients take less than one frame of computing (16 ms)', () => {
  const scales = [scale(1, 5000), scale(0.1, 500), scale(0.01, 100)]
  const plan = aPlan({
    formula,
    levels: levelsOf([60, 62, 64, 66, 68, 70, 72, 74], 66),
    sharedDoses: [{ ingredientId: 'yeast', by: 'stock' }],
    kitchenIds: scales.map(({ id }) => id),
  })
  const once = () => {
    const begun = process.cpuUsage()
    const sheet = weighSheet(plan, scales)
    const water = waterPlan(plan, scales)
    const riders = [levelRiders(plan), benchShift(plan)]
    const problems = planProblems(plan, scales)
    expect([sheet.batches.length, water.ok, riders[0]?.length, problems.length]).toEqual([
      8,
      true,
      8,
      0,
    ])
    const { user, system } = process.cpuUsage(begun)
    return (user + system) / 1000
  }
  const milliseconds = Array.from({ length: 30 }, once).toSorted((a, b) => a - b)
  expect(milliseconds[15]).toBeLessThan(16)
})
