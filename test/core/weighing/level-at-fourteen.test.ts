import { expect, test } from 'vitest'
import type { Formula } from '@/core/formula/formula-record.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { levelFromWeights } from '@/core/weighing/level-from-weights.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { aPlan, factorOf, hydration, levelsOf, plainFormula, scale } from '../trial/a-plan.ts'

const bag = (id: string, moisturePercent?: number): KitchenThing => ({
  ...{ id, kind: 'flour', name: id, lot: '' },
  ...(moisturePercent === undefined ? {} : { moisturePercent }),
})

const lots = (formula: Formula, of: Record<string, string>): Formula => ({
  ...formula,
  ingredients: formula.ingredients.map((one) =>
    of[one.id] ? { ...one, flourLotId: of[one.id] as string } : one,
  ),
})

const plan = (level: number, formula = lots(plainFormula, { flour: 'bag' })) =>
  aPlan({ levels: levelsOf([level], level), formula, kitchenIds: [] })

// 65 % at 14 % moisture, weighed from drier and damper flour: a = (100 + 65)(100 - M)/86 - 100 (the 14 % basis,
// X14 = X 86/(100 - M)), so 11 % -> 70.8, 12 % -> 68.8, 13 % -> 66.9, 15 % -> 63.1
test.each([
  [11, 70.8],
  [12, 68.8],
  [13, 66.9],
  [14, 65],
  [15, 63.1],
])('flour of %s %% moisture at %s %% water as weighed is 65 %% at 14 %%', (moisture, weighed) => {
  const [batch] = weighSheet(plan(weighed), [scale(0.1, 5000), bag('bag', moisture)]).batches
  expect(batch?.achieved?.value).toBeCloseTo(weighed, 1)
  expect(Math.abs((batch?.atFourteen ?? 0) - 65)).toBeLessThan(0.06)
})

test('nothing is told at 14 % where the bag is not known, or for another factor', () => {
  const kitchen = [scale(1, 5000), bag('bag')]
  expect(weighSheet(plan(65), kitchen).batches[0]?.atFourteen).toBeNull()
  const salt = factorOf({ on: 'salt', ingredientId: 'salt' })
  const salty = { ...plan(2), factor: salt }
  const known = [scale(1, 5000), bag('bag', 12)]
  expect(weighSheet(salty, known).batches[0]?.atFourteen).toBeNull()
})

test('a ripe starter counts by its own flour, and the logged weights by theirs', () => {
  // 900 g flour at 12 %, 600 g water, 200 g starter of 100 g rye at 10 % and 100 g water:
  // flour at 14 %: 900 x 88/86 + 100 x 90/86 = 1025.581; all of it 1700 g, so water 674.419: 65.760 %
  const formula: Formula = {
    ingredients: [
      { id: 'flour', name: 'white', kind: 'flour', percent: 90, flourLotId: 'white' },
      { id: 'rye', name: 'rye', kind: 'flour', percent: 10, flourLotId: 'rye' },
      { id: 'water', name: 'water', kind: 'water', percent: 70 },
    ],
    preferments: [
      {
        ...{ id: 'starter', name: 'starter', kind: 'starter', flourSharePercent: 10 },
        parts: [
          { ingredientId: 'rye', percent: 100 },
          { ingredientId: 'water', percent: 100 },
        ],
      },
    ],
    batchSize: { by: 'flour', flourGrams: 1000 },
  }
  const kitchen = [scale(1, 5000), bag('white', 12), bag('rye', 10)]
  const [batch] = weighSheet(plan(70, formula), kitchen).batches
  expect(batch?.atFourteen).toBeCloseTo(65.76, 2)
  // 20 g of water less were logged: 654.419 / 1025.581
  const logged = [{ ingredientId: 'water', prefermentId: null, grams: 580 }]
  const none = { dustingFlourGrams: 0, handWaterGrams: 0, oilGrams: 0 }
  const worked = batch && levelFromWeights(batch, hydration, logged, none)
  expect(worked?.ok && worked.atFourteen).toBeCloseTo(63.81, 2)
})
