import 'fake-indexeddb/auto'
import { expect, test } from 'vitest'
import { openHouses } from '@/app/home/start/open-houses.ts'
import { planOfBake } from '@/app/home/start/start-bake.ts'
import { changesOf, openBake, openBakes } from '@/app/home/start/start-choices.ts'
import type { House } from '@/core/house/house-record.ts'
import { withFactorKind } from '@/core/plan-edits/factor/factor-for-kind.ts'
import { planShape } from '@/core/trial/plan-record.ts'
import { counting, planOfTest } from '../../core/plan-edits/plan-of-test.ts'

const newId = counting('new')
const begun = { newId, at: 1_700_000_000_000, zone: 'Europe/Rome' }
const of = (bake: Parameters<typeof planOfBake>[0]) => planOfBake(bake, begun, [])

const house = (trialId: string): House => {
  const { formula, steps, at, zone } = planOfTest()
  const restsOn = [
    {
      ...{ trialId, question: 'How wet?', level: '70 %', because: 'picked' as const },
      ...{ sessions: 1, tasters: 1, said: '' },
    },
  ]
  const made = { by: 'flour', flourGrams: 500 } as const
  const revision = { at, zone, formula, steps, temperature: null, yield: made, restsOn, note: '' }
  return { id: trialId, name: 'Club loaf, 70 %', createdAt: at, revisions: [revision] }
}

test('what stands open makes a whole plan whose question is of its bread, also when another thing is changed', async () => {
  for (const { value, name } of openBakes) {
    const plan = await of(openBake(value))
    expect(planShape.parse(plan)).toEqual(plan)
    expect(plan.question).toContain(name.toLowerCase())
    const changed = withFactorKind(plan, plan.factor.acts.on === 'salt' ? 'yeast' : 'salt', newId)
    expect(changed.question).toMatch(/^How much (salt|yeast) does our .+ need\?$/)
    expect(changed.question).toContain(name.toLowerCase())
  }
})

test('a house formula lends its method, and no level in its name comes into the question', async () => {
  const plan = await of({ from: 'house', house: house('t1') })
  expect(plan.question).toBe('How wet should our bread be?')
  expect(plan.steps.map(({ name }) => name)).toEqual(planOfTest().steps.map(({ name }) => name))
})

test('a pasted formula keeps the plain method around it', async () => {
  const { formula } = planOfTest()
  const rye = formula.ingredients.map((each) =>
    each.kind === 'flour' ? { ...each, name: 'Rye flour' } : each,
  )
  const plan = await of({ from: 'pasted', formula: { ...formula, ingredients: rye } })
  expect(plan.formula.ingredients.map(({ name }) => name)).toContain('Rye flour')
  expect(plan.steps.length).toBeGreaterThan(0)
  expect(plan.question).toBe('How wet should our bread be?')
})

test('an earlier trial keeps its own question, and what it changed can be changed again', async () => {
  const other = withFactorKind(
    { ...planOfTest(), question: 'Is the long wait worth it?' },
    'cold-hours',
    newId,
  )
  expect((await of({ from: 'trial', plan: other })).question).toBe('Is the long wait worth it?')
  const [first, ...rest] = changesOf({ from: 'trial', plan: other })
  expect(first).toMatchObject({ value: 'cold-hours', name: 'Cold proof' })
  expect(rest).toEqual(changesOf(null))
  expect(changesOf({ from: 'trial', plan: planOfTest() })).toEqual(rest)
})

test('a house formula that gives away a lesson under way is not offered', () => {
  const houses = [house('t1'), house('t2')]
  expect(openHouses(houses, []).map(({ id }) => id)).toEqual(['t1', 't2'])
  expect(openHouses(houses, ['t2']).map(({ id }) => id)).toEqual(['t1'])
})
