import { expect, test } from 'vitest'
import type { Formula } from '@/core/formula/formula-record.ts'
import { formulaFromText } from '@/core/formula/pasted/formula-from-text.ts'
import { withFactorKind } from '@/core/plan-edits/factor/factor-for-kind.ts'
import { addedForFactor } from '@/core/plan-edits/formula/added-for-factor.ts'
import { withFormula } from '@/core/plan-edits/formula/replace-formula.ts'
import { formulaLacksText, formulaReplacedText } from '@/core/wording/plan/formula-lacks-text.ts'
import { counting, planOfTest } from '../plan-of-test.ts'

const milkDough = read(
  'flour 500 g\nmilk 300 g\nsalt 10 g\nyeast 2 g\negg 55 g\nhoney 30 g\nbutter 50 g',
)

function read(text: string): Formula {
  const { formula } = formulaFromText(text, counting('line'))
  if (!formula) throw new Error('no formula')
  return formula
}

test('a milk dough in a trial of hydration: the water it would get is said before', () => {
  const added = addedForFactor(planOfTest(), milkDough)
  // Without water there is nothing to stand around but the usual 65, a step of 4 to either side.
  expect(added).toMatchObject({ names: ['Water'], levels: [61, 65, 69], liquids: ['milk', 'egg'] })
  expect(added && formulaLacksText(added)).toBe(
    "The factor is “Hydration”, and this formula lacks what it moves: Water will be added at 61, 65 and 69 % of flour. To move the milk instead, use the formula, then set the factor’s kind to “Another ingredient's percentage”: what was added then goes again.",
  )
  expect(formulaReplacedText(added?.names ?? [])).toBe(
    'Formula replaced; Water added for the factor',
  )
})

test('the way that is told keeps its word: the water goes, the milk is moved, the rest is as pasted', () => {
  const next = withFormula(planOfTest(), milkDough, counting('new'))
  const turned = withFactorKind(next, 'ingredient', counting('more'))
  const named = turned.formula.ingredients.map(({ name, percent }) => [name, percent])
  expect(named).toEqual(milkDough.ingredients.map(({ name, percent }) => [name, percent]))
  const milk = turned.formula.ingredients.find(({ name }) => name === 'milk')
  expect(turned.factor.acts).toEqual({ on: 'ingredient', ingredientId: milk?.id })
})

test('a formula that lacks nothing gets nothing', () => {
  expect(addedForFactor(planOfTest(), read('flour 500 g\nwater 300 g'))).toBeNull()
  const cold = withFactorKind(planOfTest(), 'cold-hours', counting('new'))
  expect(addedForFactor(cold, milkDough)).toBeNull()
})

test('without a liquid, the mend is a line of one’s own', () => {
  const salt = withFactorKind(planOfTest(), 'salt', counting('new'))
  const added = addedForFactor(salt, read('flour 500 g\nmilk 300 g'))
  expect(added).toMatchObject({ names: ['Salt'], liquids: [] })
  expect(added && formulaLacksText(added)).toContain('write your own on a line here')
  const share = withFactorKind(planOfTest(), 'preferment-share', counting('new'))
  const poolish = addedForFactor(share, milkDough)
  expect(poolish?.names).toEqual(['Poolish'])
  // A preferment on a pasted line is refused, so that no such line is asked for.
  expect(poolish && formulaLacksText(poolish)).not.toContain('line')
})
