import { expect, test } from 'vitest'
import { formulaFromText } from '@/core/formula/pasted/formula-from-text.ts'
import { withFactorKind } from '@/core/plan-edits/factor/factor-for-kind.ts'
import { factorKinds } from '@/core/plan-edits/factor/factor-kinds.ts'
import { withFormula } from '@/core/plan-edits/formula/replace-formula.ts'
import { usualIngredient, usualPreferment } from '@/core/plan-edits/formula/usual-ingredient.ts'
import type { FactorKind } from '@/core/trial/factor.ts'
import { planProblems } from '@/core/trial/plan-problems.ts'
import { type Plan, planShape } from '@/core/trial/plan-record.ts'
import { counting, idOf, planOfTest } from '../plan-of-test.ts'

test.each(factorKinds.map(({ kind }) => kind))(
  'turning the factor to %s gives a whole plan whose factor names what is there',
  (kind) => {
    const plan = withFactorKind(planOfTest(), kind, counting('new'))
    expect(planShape.safeParse(plan).success).toBe(true)
    expect(plan.factor.acts.on).toBe(kind)
    const reasons = planProblems(plan).map(({ reason }) => reason)
    expect(reasons).not.toContain('factor-names-nothing')
    expect(reasons).not.toContain('factor-names-wrong-kind')
    expect(reasons).not.toContain('one-dough-cannot-serve')
  },
)

test('what the kind needs and the plan lacks is added: a poolish, a second flour, a cold proof', () => {
  const plan = planOfTest()
  expect(withFactorKind(plan, 'preferment-share', counting()).formula.preferments).toHaveLength(1)
  const flours = withFactorKind(plan, 'flour-share', counting('new')).formula.ingredients
  expect(flours.filter(({ kind }) => kind === 'flour').map(({ percent }) => percent)).toEqual([
    100, 0,
  ])
  const steps = withFactorKind(plan, 'cold-hours', counting('new')).steps
  // It stands where it is worked: after the proof, before the oven.
  const kinds = steps.map(({ kind }) => kind)
  expect(kinds.slice(kinds.indexOf('cold-proof') - 1).slice(0, 3)).toEqual([
    'proof',
    'cold-proof',
    'bake',
  ])
})

test('levels start anew around what the plan has: one step down, the control, one step up', () => {
  const valuesOf = (kind: Parameters<typeof withFactorKind>[1]) =>
    withFactorKind(planOfTest(), kind, counting('new')).levels.map(({ value, control }) => [
      value,
      control,
    ])
  expect(valuesOf('salt')).toEqual([
    [1.6, false],
    [2, true],
    [2.4, false],
  ])
  // A second flour is added at 0 %, and nothing lies below that.
  expect(valuesOf('flour-share')).toEqual([
    [0, true],
    [15, false],
    [30, false],
  ])
  expect(valuesOf('choice')).toEqual([
    [null, true],
    [null, false],
  ])
  expect(valuesOf('own')).toEqual([])
})

test('the question turns with the kind as long as it is nobody’s own', () => {
  const plan = planOfTest()
  expect(plan.question).toBe('How wet should our country loaf be?')
  expect(withFactorKind(plan, 'salt', counting('new')).question).toBe(
    'How much salt does our country loaf need?',
  )
  const own = { ...plan, question: 'Wetter?' }
  expect(withFactorKind(own, 'salt', counting('new')).question).toBe('Wetter?')
})

test('another formula keeps the ids of what has the same name, and the factor stays on its water', () => {
  const plan = planOfTest()
  const formula = {
    ingredients: [
      { id: 'a', name: 'Rye flour', kind: 'flour' as const, percent: 100 },
      { id: 'b', name: 'water', kind: 'water' as const, percent: 80 },
    ],
    preferments: [],
    batchSize: { by: 'flour' as const, flourGrams: 300 },
  }
  const next = withFormula(plan, formula, counting('new'))
  const [rye, water] = next.formula.ingredients
  expect(rye?.id).toBe('new1')
  expect(water?.id).toBe(idOf(plan, 'Water'))
  expect(next.factor.acts).toEqual(plan.factor.acts)
})

test('two things of one name in another formula stay two', () => {
  const plan = planOfTest()
  const oils = ['one', 'other'].map((id) => usualIngredient('fat', id))
  const ahead = ['first', 'second'].map((id) => usualPreferment(plan.formula.ingredients, id))
  const formula = {
    ...plan.formula,
    ingredients: [...plan.formula.ingredients, ...oils],
    preferments: ahead,
  }
  const again = withFormula({ ...plan, formula }, formula, counting('new')).formula
  for (const things of [again.ingredients, again.preferments])
    expect(new Set(things.map(({ id }) => id)).size).toBe(things.length)
})

test('another formula without water gets one when hydration is the factor', () => {
  const formula = {
    ingredients: [{ id: 'a', name: 'Rye flour', kind: 'flour' as const, percent: 100 }],
    preferments: [],
    batchSize: { by: 'flour' as const, flourGrams: 300 },
  }
  const next = withFormula(planOfTest(), formula, counting('new'))
  const water = next.formula.ingredients.find(({ kind }) => kind === 'water')
  expect(next.factor.acts).toEqual({ on: 'hydration', ingredientId: water?.id })
})

test('levels nobody has changed move around a pasted formula; a typed one stays', () => {
  let count = 0
  const { formula } = formulaFromText('600 g flour\n395 g water\n12 g salt', () => `p${++count}`)
  if (!formula) throw new Error('no formula')
  const plan = planOfTest()
  const valuesOf = (next: Plan) => next.levels.map(({ value }) => value)
  const next = withFormula(plan, formula, counting('new'))
  // 395 of 600 g is 65.83 %, in three figures 65.8; a step of 4 to either side.
  expect(valuesOf(next)).toEqual([61.8, 65.8, 69.8])
  expect(next.levels.map(({ id }) => id)).toEqual(plan.levels.map(({ id }) => id))
  expect(next.levels.map(({ control }) => control)).toEqual([false, true, false])
  const typed = {
    ...plan,
    levels: plan.levels.map((level) => ({ ...level, value: (level.value ?? 0) + 1 })),
  }
  expect(valuesOf(withFormula(typed, formula, counting('new')))).toEqual([67, 71, 75])
})

test('from kind to kind a batch keeps the size of its pieces, whatever the number of levels', () => {
  // 500 g of flour a piece: three levels of one dough take 1500 g, two options mixed apart 500 g each.
  const grams = (plan: Plan) =>
    plan.formula.batchSize.by === 'flour' ? plan.formula.batchSize.flourGrams : null
  const proof = withFactorKind(planOfTest(), 'proof-time', counting('new'))
  const choice = withFactorKind(proof, 'choice', counting('more'))
  const again = withFactorKind(choice, 'bake-time', counting('last'))
  expect([proof, choice, again].map(grams)).toEqual([1500, 500, 1500])
  // A piece is then all the dough of one level: 500 g of flour at 172.8 %, to the next ten.
  const mass = withFactorKind(planOfTest(), 'piece-mass', counting('new'))
  expect(mass.levels.map(({ value }) => value)).toEqual([810, 860, 910])
})

const turned = (plan: Plan, ...kinds: FactorKind[]) =>
  kinds.reduce((now, kind, at) => withFactorKind(now, kind, counting(`turn${at}-`)), plan)

test.each(['preferment-share', 'ingredient', 'flour-share', 'cold-hours'] as const)(
  'what turning to %s put in goes when the kind is turned on',
  (kind) => {
    const plan = planOfTest()
    for (const next of ['hydration', 'salt', 'bake-time'] as const) {
      const back = turned(plan, kind, next)
      expect(back.formula).toEqual(turned(plan, next).formula)
      expect(back.steps).toEqual(plan.steps)
    }
  },
)

test('what a kind put in goes all the same after the plan was kept and read again', () => {
  const plan = planOfTest()
  for (const kind of ['preferment-share', 'ingredient', 'flour-share', 'cold-hours'] as const) {
    const read = planShape.parse(JSON.parse(JSON.stringify(turned(plan, kind))))
    const back = turned(read, 'hydration')
    expect(back.formula).toEqual(plan.formula)
    expect(back.steps).toEqual(plan.steps)
    expect(back.putIn).toBeUndefined()
  }
})

test('what the switch put in and the baker changed, or uses elsewhere, stays', () => {
  const oil = turned(planOfTest(), 'ingredient')
  const named = (plan: Plan) => plan.formula.ingredients.map(({ name }) => name)
  const ingredients = oil.formula.ingredients.map((each) =>
    each.name === 'Olive oil' ? { ...each, percent: 4 } : each,
  )
  const changed = { ...oil, formula: { ...oil.formula, ingredients } }
  expect(named(turned(changed, 'hydration'))).toContain('Olive oil')
  const dose = { ingredientId: idOf(oil, 'Olive oil'), by: 'dry-mix' as const }
  const shared = { ...oil, sharedDoses: [dose] }
  expect(named(turned(shared, 'hydration'))).toContain('Olive oil')
})

test('an ingredient of the baker’s own stays, though it is the usual one', () => {
  const plan = planOfTest()
  const ingredients = [...plan.formula.ingredients, usualIngredient('fat', 'own')]
  const own = { ...plan, formula: { ...plan.formula, ingredients } }
  const back = turned(own, 'ingredient', 'hydration')
  expect(back.formula.ingredients).toEqual(ingredients)
})
