import { expect, test } from 'vitest'
import { usualPreferment } from '@/core/plan-edits/formula/usual-ingredient.ts'
import type { TakenOut } from '@/core/plan-edits/take-out/take-out.ts'
import {
  takeOutIngredient,
  takeOutLevel,
  takeOutPreferment,
  takeOutResponse,
  takeOutStep,
} from '@/core/plan-edits/take-out/take-out.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { idOf, planOfTest } from '../plan-of-test.ts'

function full(): Plan {
  const plan = planOfTest()
  const yeast = idOf(plan, 'Instant yeast')
  const poolish = usualPreferment(plan.formula.ingredients, 'poolish')
  const parts = [...poolish.parts, { ingredientId: yeast, percent: 0.1 }]
  const [step] = plan.steps
  return {
    ...plan,
    formula: { ...plan.formula, preferments: [{ ...poolish, parts }] },
    sharedDoses: [{ ingredientId: yeast, by: 'dry-mix' }],
    levels: plan.levels.map((level, index) =>
      index === 0
        ? {
            ...level,
            changes: [
              { what: 'ingredient' as const, ingredientId: yeast, name: 'Fresh yeast' },
              { what: 'step' as const, stepId: step?.id ?? '', done: false },
            ],
          }
        : level,
    ),
  }
}

function taken(what: TakenOut | null): TakenOut {
  if (!what) throw new Error('nothing was taken out')
  return what
}

test('an ingredient goes out of preferments, shared doses and options, and comes back to all of them', () => {
  const plan = full()
  const yeast = idOf(plan, 'Instant yeast')
  const out = taken(takeOutIngredient(plan, yeast))
  expect(JSON.stringify(out.plan)).not.toContain(`"${yeast}"`)
  expect(out.restore(out.plan)).toEqual(plan)
})

test('what the factor moves cannot be taken out', () => {
  const plan = full()
  expect(takeOutIngredient(plan, idOf(plan, 'Water'))).toBeNull()
  const [step] = plan.steps
  const timed: Plan = {
    ...plan,
    factor: { ...plan.factor, acts: { on: 'rest-time', stepId: step?.id ?? '' } },
  }
  expect(takeOutStep(timed, step?.id ?? '')).toBeNull()
})

test('a step, a level, a preferment and a response come back where they stood', () => {
  const plan = full()
  const outs = [
    takeOutStep(plan, plan.steps[0]?.id ?? ''),
    takeOutLevel(plan, plan.levels[1]?.id ?? ''),
    takeOutPreferment(plan, 'poolish'),
    takeOutResponse(plan, plan.mainResponseId ?? ''),
  ].map(taken)
  expect(outs.map(({ plan: without }) => without.mainResponseId)[3]).toBeNull()
  for (const out of outs) {
    expect(out.plan).not.toEqual(plan)
    expect(out.restore(out.plan)).toEqual(plan)
  }
})
