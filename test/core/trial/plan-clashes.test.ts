import { expect, test } from 'vitest'
import type { Level } from '@/core/trial/level.ts'
import { planProblems } from '@/core/trial/plan-problems.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { aPlan, factorOf, hydration, kitchen, levelsOf, plainFormula, scale } from './a-plan.ts'

const seen = (change: Partial<Plan>, things = kitchen) =>
  planProblems(aPlan(change), things).map(
    ({ severity, path, reason }) => `${severity} ${path} ${reason}`,
  )

test('more pieces than dough says how many are asked and there', () => {
  const batchSize = { by: 'pieces' as const, pieces: 3, pieceGrams: 250, lossPercent: 0 }
  const plan = aPlan({
    formula: { ...plainFormula, batchSize },
    flights: 2,
    sparePieces: 1,
    warmUpPiece: true,
  })
  expect(planProblems(plan, kitchen)).toContainEqual({
    path: '/formula/batchSize/pieces',
    severity: 'stop',
    reason: 'more-pieces-than-dough',
    asked: 4,
    has: 3,
  })
})

test('levels that weigh the same on the scale collide, and a finer scale parts them', () => {
  // 100 g flour: 0.4 and 0.6 % yeast are 0.4 and 0.6 g; on a 2 g scale both read 0
  const plan = {
    factor: factorOf({ on: 'yeast', ingredientId: 'yeast' } as const),
    levels: levelsOf([0.4, 0.6], 0.4),
    expectation: null,
    formula: { ...plainFormula, batchSize: { by: 'flour' as const, flourGrams: 100 } },
  }
  const [clash, ...rest] = planProblems(aPlan({ ...plan, kitchenIds: ['scale-2'] }), [
    scale(2, 5000),
  ]).filter(({ reason }) => reason === 'levels-collide-on-scale')
  expect(rest).toEqual([])
  expect(clash).toMatchObject({
    path: '/levels/1/value',
    otherIndex: 0,
    grams: 0,
    resolutionGrams: 2,
  })
  expect(seen({ ...plan, kitchenIds: ['scale-0.01'] }, [scale(0.01, 200)]).join()).not.toContain(
    'collide',
  )
})

test('a level the formula cannot carry is named at the level', () => {
  const formula = {
    ...plainFormula,
    preferments: [
      {
        id: 'p',
        name: 'poolish',
        kind: 'poolish' as const,
        flourSharePercent: 65,
        parts: [
          { ingredientId: 'flour', percent: 100 },
          { ingredientId: 'water', percent: 100 },
        ],
      },
    ],
  }
  const found = planProblems(aPlan({ formula, factor: factorOf(hydration) }), kitchen)
  expect(found).toEqual([
    expect.objectContaining({
      path: '/levels/0/value',
      severity: 'stop',
      reason: 'level-breaks-formula',
      label: '62',
      trouble: expect.objectContaining({ reason: 'preferment-holds-more', ingredientId: 'water' }),
    }),
  ])
})

test('options: without a change, and alike', () => {
  const option = (id: string, name?: string): Level => ({
    id,
    value: null,
    label: id,
    control: id === 'a',
    ...(name === undefined ? {} : { changes: [{ what: 'tool', name }] }),
  })
  const levels = [option('a'), option('b'), option('c', 'stone'), option('d', 'stone')]
  expect(seen({ factor: factorOf({ on: 'choice' }), levels, expectation: null })).toEqual([
    'ask /expectation no-expectation',
    'ask /levels/1/changes option-without-change',
    'ask /levels/3/changes options-alike',
  ])
})
