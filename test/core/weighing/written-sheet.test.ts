import { expect, test } from 'vitest'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { withFactorKind } from '@/core/plan-edits/factor/factor-for-kind.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { type WrittenRow, writtenSheet } from '@/core/weighing/written-sheet.ts'
import { counting, idOf, planOfTest } from '../plan-edits/plan-of-test.ts'

const scaleOf = (resolutionGrams: number): KitchenThing => ({
  ...{ id: 'scale', kind: 'scale', name: 'Bench scale', capacityGrams: 2000 },
  resolutionGrams,
})
const scale = scaleOf(0.1)
const written = (rows: readonly WrittenRow[]) => rows.map(({ head, cells }) => [head, ...cells])

test('weights are written with the decimals the scale shows', () => {
  const { weights } = writtenSheet(weighSheet(planOfTest(), [scale]), '%')
  // 500 g flour: water 66, 70, 74 % = 330, 350, 370 g; salt 2 % = 10 g; yeast 0.8 % = 4 g.
  expect(written(weights)).toEqual([
    ['Bread flour', '500.0', '500.0', '500.0'],
    ['Water', '330.0', '350.0', '370.0'],
    ['Salt', '10.0', '10.0', '10.0'],
    ['Instant yeast', '4.0', '4.0', '4.0'],
  ])
})

test('without a scale one decimal, under 10 g two; and no level is said to be achieved', () => {
  const { weights, comesTo } = writtenSheet(weighSheet(planOfTest(), []), '%')
  expect(weights.map(({ cells }) => cells[0])).toEqual(['500.0', '330.0', '10.0', '4.00'])
  expect(comesTo.map(({ head }) => head)).toEqual(['Dough'])
})

test('dough and the achieved level stand under them, with the uncertainty in one figure', () => {
  const { comesTo } = writtenSheet(weighSheet(planOfTest(), [scale]), '% of flour')
  // Dough 500 × 1.688, 1.728, 1.768. u = 0.1/√6 = 0.0408 g; at 66 %: 66 √((u/330)² + (u/500)²) = 0.0098, U = 0.02.
  expect(written(comesTo).map((row) => row.slice(0, 2))).toEqual([
    ['Dough', '844'],
    ['Achieved, %', '66.00'],
    ['give or take', '0.02'],
  ])
  expect(comesTo[0]?.cells).toEqual(['844', '864', '884'])
})

test('a dose that goes into a preferment is named as both', () => {
  const start = withFactorKind(planOfTest(), 'preferment-share', counting('new'))
  const yeast = idOf(start, 'Instant yeast')
  const plan = { ...start, sharedDoses: [{ ingredientId: yeast, by: 'dry-mix' as const }] }
  const heads = writtenSheet(weighSheet(plan, [scale]), '%').weights.map(({ head }) => head)
  expect(heads).toContain('Instant yeast, dry mix, for the Poolish')
  expect(heads).toContain('Instant yeast, dry mix')
})

test('a preferment goes in at what its parts were weighed to: what goes into the bowl makes the dough', () => {
  const plan = withFactorKind(planOfTest(), 'preferment-share', counting('new'))
  for (const step of [5, 1, 0.1]) {
    const sheet = weighSheet(plan, [scaleOf(step)])
    const { weights } = writtenSheet(sheet, '%')
    for (const [at, { doughGrams }] of sheet.batches.entries()) {
      const gramsOf = (of: (row: WrittenRow) => boolean) =>
        weights.filter(of).reduce((sum, { cells }) => sum + (Number(cells[at]) || 0), 0)
      const inBowl = gramsOf(({ head }) => !head.includes('for the Poolish'))
      expect(inBowl).toBeCloseTo(doughGrams, 6)
      expect(gramsOf(({ quiet }) => quiet)).toBeCloseTo(
        gramsOf(({ head }) => head.includes('for the Poolish')),
        6,
      )
    }
  }
})
