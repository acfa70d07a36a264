import { expect, test } from 'vitest'
import { batchGrams } from '@/core/formula/batch-grams.ts'
import type { Formula } from '@/core/formula/formula-record.ts'
import { formulaViews } from '@/core/formula/formula-views.ts'
import { hydrationPercent } from '@/core/formula/hydration.ts'
import { benchShift } from '@/core/trial/bench-shift.ts'
import type { ActsOn, Held } from '@/core/trial/factor.ts'
import { formulaAtLevel } from '@/core/trial/formula-at-level.ts'
import type { Level } from '@/core/trial/level.ts'
import { levelRiders } from '@/core/trial/level-riders.ts'
import { plannedBatches } from '@/core/trial/planned-batches.ts'
import { referenceLevel } from '@/core/trial/reference-level.ts'
import { starterTrap } from '@/core/trial/starter-trap.ts'
import { aPlan, factorOf, hydration, levelsOf, plainFormula } from './a-plan.ts'

function at(
  plan: Pick<ReturnType<typeof aPlan>, 'formula' | 'factor' | 'levels'>,
  index: number,
): Formula {
  const level = plan.levels[index]
  const result = level ? formulaAtLevel(plan, level) : null
  if (!result?.ok) throw new Error(`level ${index} cannot be made`)
  return result.formula
}

const percent = (formula: Formula, id: string) =>
  formula.ingredients.find((one) => one.id === id)?.percent

test('hydration moves the named water so that all water comes to the level', () => {
  const formula: Formula = {
    ...plainFormula,
    ingredients: [
      ...plainFormula.ingredients,
      { id: 'soak', name: 'soaking water', kind: 'water', percent: 10 },
    ],
  }
  const plan = aPlan({ formula })
  expect(percent(at(plan, 2), 'water')).toBe(64)
  expect(hydrationPercent(at(plan, 2))).toBe(74)
  const low = { ...plan, levels: levelsOf([5, 68]) }
  expect(low.levels[0] && formulaAtLevel(low, low.levels[0])).toEqual({
    ok: false,
    reason: 'below-other-water',
    otherWaterPercent: 10,
  })
})

test('the reference is the control, else the middle level', () => {
  expect(referenceLevel(levelsOf([62, 68, 74], 62))?.value).toBe(62)
  expect(referenceLevel(levelsOf([74, 62, 68]))?.value).toBe(68)
  expect(referenceLevel([])).toBeNull()
})

test.each<[Held, number, number]>([
  // control 68 % on 1,000 g flour: dough 1,704; at 74 % by flour 1,764
  ['flour', 1000, 1764],
  // dough held: 1,704 / 1.764 = 965.986 flour
  ['dough', 965.986, 1704],
  ['piece', 1000, 1764],
])('sized by flour, %s held', (held, flourGrams, doughGrams) => {
  const plan = aPlan({ factor: factorOf(hydration, held) })
  const grams = batchGrams(at(plan, 2))
  expect(grams.flourGrams).toBeCloseTo(flourGrams, 3)
  expect(grams.doughGrams).toBeCloseTo(doughGrams, 6)
})

test.each<[Held, number, number]>([
  // 2 × 250 g at the control: flour 500/1.704 = 293.427; at 74 % 293.427 × 1.764 / 2 = 258.803 a piece
  ['flour', 293.427, 258.803],
  // 500 / 1.764 = 283.447
  ['dough', 283.447, 250],
  ['piece', 283.447, 250],
])('sized by pieces, %s held', (held, flourGrams, pieceGrams) => {
  const batchSize = { by: 'pieces' as const, pieces: 2, pieceGrams: 250, lossPercent: 0 }
  const plan = aPlan({ factor: factorOf(hydration, held), formula: { ...plainFormula, batchSize } })
  const grams = batchGrams(at(plan, 2))
  expect(grams.flourGrams).toBeCloseTo(flourGrams, 3)
  expect(grams.pieceGrams).toBeCloseTo(pieceGrams, 3)
  expect(batchGrams(at(plan, 1)).pieceGrams).toBe(250)
})

test('a flour share is taken from the named flour', () => {
  const formula: Formula = {
    ...plainFormula,
    ingredients: [
      { id: 'rye', name: 'rye', kind: 'flour', percent: 10 },
      ...plainFormula.ingredients.map((one) =>
        one.id === 'flour' ? { ...one, percent: 90 } : one,
      ),
    ],
  }
  const acts: ActsOn = { on: 'flour-share', ingredientId: 'rye', fromIngredientId: 'flour' }
  const plan = aPlan({ formula, factor: factorOf(acts), levels: levelsOf([0, 30, 101]) })
  expect(percent(at(plan, 1), 'rye')).toBe(30)
  expect(percent(at(plan, 1), 'flour')).toBe(70)
  const past = plan.levels[2]
  expect(past && formulaAtLevel(plan, past)).toMatchObject({
    reason: 'taken-flour-runs-out',
    mostPercent: 100,
  })
})

const starter: Formula = {
  ...plainFormula,
  preferments: [
    {
      id: 'starter',
      name: 'starter',
      kind: 'starter',
      flourSharePercent: 10,
      parts: [
        { ingredientId: 'flour', percent: 100 },
        { ingredientId: 'water', percent: 100 },
      ],
    },
  ],
}

test('a preferment share keeps hydration; left alone, the final dough would drift (the trap), and by how much', () => {
  const acts: ActsOn = { on: 'preferment-share', prefermentId: 'starter' }
  const plan = aPlan({ formula: starter, factor: factorOf(acts), levels: levelsOf([10, 30], 10) })
  expect(hydrationPercent(at(plan, 1))).toBe(70)
  expect(formulaViews(at(plan, 1)).overall.map(({ grams }) => grams)).toEqual([1000, 700, 20, 4])
  const [first, second] = starterTrap(plan)
  expect(first).toMatchObject({ hydrationLeftAlonePercent: 70, lessFlourGrams: 0 })
  // final mix 900 flour + 600 water, with 300 + 300 from the starter: 900/1200 = 75 %; mend: 200 g less of each
  expect(second?.hydrationLeftAlonePercent).toBeCloseTo(75, 10)
  expect(second?.offPoints).toBeCloseTo(5, 10)
  expect(second?.lessFlourGrams).toBeCloseTo(200, 9)
  expect(second?.lessWaterGrams).toBeCloseTo(200, 9)
  expect(starterTrap(aPlan())).toEqual([])
})

test('options of a choice swap what they say, at their own water where they have one', () => {
  const option = (id: string, changes: NonNullable<Level['changes']>): Level => ({
    id,
    value: null,
    label: id,
    control: id === 'a',
    changes,
  })
  const bag = plainFormula.ingredients.map((one) =>
    one.id === 'flour' ? { ...one, flourLotId: 'bag-1' } : one,
  )
  const levels = [
    option('a', []),
    option('b', [{ what: 'ingredient', ingredientId: 'flour', name: 'mill flour' }]),
    option('c', [
      { what: 'ingredient', ingredientId: 'flour', name: 'strong flour' },
      { what: 'hydration', percent: 76 },
      { what: 'tool', name: 'stone' },
    ]),
    option('d', [{ what: 'ingredient', ingredientId: 'gone', name: 'x' }]),
  ]
  const formula = { ...plainFormula, ingredients: bag }
  const plan = aPlan({ factor: factorOf({ on: 'choice' }), levels, formula })
  expect(at(plan, 0)).toEqual(formula)
  expect(at(plan, 1).ingredients[0]).toEqual({
    id: 'flour',
    name: 'mill flour',
    kind: 'flour',
    percent: 100,
  })
  expect(hydrationPercent(at(plan, 2))).toBe(76)
  expect(batchGrams(at(plan, 2)).flourGrams).toBe(1000)
  expect(levels[3] && formulaAtLevel(plan, levels[3])).toMatchObject({
    reason: 'factor-names-nothing',
  })
})

test('other factors leave the formula alone; piece mass sets the pieces', () => {
  const proof = aPlan({ factor: factorOf({ on: 'proof-time', stepId: 'proof' }) })
  expect(at(proof, 0)).toEqual(plainFormula)
  const batchSize = { by: 'pieces' as const, pieces: 4, pieceGrams: 200, lossPercent: 0 }
  const plan = aPlan({
    factor: { ...factorOf({ on: 'piece-mass' }), splitsAt: 'divide' },
    levels: levelsOf([150, 250]),
    formula: { ...plainFormula, batchSize },
  })
  expect(batchGrams(at(plan, 1)).doughGrams).toBeCloseTo(1000, 9)
  const [one, ...rest] = plannedBatches({ ...plan, doughs: 'one' })
  expect(rest).toEqual([])
  // two pieces of 150 and two of 250 g
  expect(one?.ok && batchGrams(one.formula).doughGrams).toBeCloseTo(800, 9)
  expect(plannedBatches(plan)).toHaveLength(2)
})

test('riders at each level: salt and yeast strength in the water, flour in a piece', () => {
  const batchSize = { by: 'pieces' as const, pieces: 2, pieceGrams: 250, lossPercent: 0 }
  const plan = aPlan({
    factor: factorOf(hydration, 'piece'),
    formula: { ...plainFormula, batchSize },
  })
  const riders = levelRiders(plan)
  // 2/62 = 3.2258 %, 2/74 = 2.7027 %; 0.4/62 = 0.6452 %; flour 250/1.644 = 152.068, 250/1.764 = 141.723
  expect(riders.map((one) => one.saltPercentOfWater?.toFixed(4))).toEqual([
    '3.2258',
    '2.9412',
    '2.7027',
  ])
  expect(riders[0]?.yeastPercentOfWater).toBeCloseTo(0.6452, 4)
  expect(riders[0]?.flourPerPieceGrams).toBeCloseTo(152.068, 3)
  expect(riders[2]?.flourPerPieceGrams).toBeCloseTo(141.723, 3)
})

test('5 g of flour worked into a 250 g ball takes 70 % to 67.7 %', () => {
  const formula: Formula = {
    ...plainFormula,
    ingredients: plainFormula.ingredients.slice(0, 2),
    batchSize: { by: 'pieces', pieces: 2, pieceGrams: 250, lossPercent: 0 },
  }
  const plan = aPlan({ formula, levels: levelsOf([60, 70], 70) })
  const shift = benchShift(plan)[1]
  expect(shift).toMatchObject({ into: 'piece', intoGrams: 250 })
  // 250/1.7 = 147.059 flour, 102.941 water: /152.059 = 67.698; 10 g: /157.059 = 65.543; water + 5: 107.941/147.059 = 73.4
  expect(shift?.flour.map(({ level }) => level.toFixed(2))).toEqual(['67.70', '65.54'])
  expect(shift?.water.map(({ level }) => level.toFixed(2))).toEqual(['73.40', '76.80'])
})
