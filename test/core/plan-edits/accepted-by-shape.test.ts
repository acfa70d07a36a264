import fc from 'fast-check'
import { expect, test } from 'vitest'
import { applyRemedy } from '@/core/fairness/apply-remedy.ts'
import { adviceCodes, type Remedy } from '@/core/fairness/remedy.ts'
import { type Plan, planShape } from '@/core/trial/plan-record.ts'
import { referenceTroubles } from '@/core/whole-trial/reference-troubles.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { kitchenOfTest, somePresses } from './any-plan.ts'
import { counting, planOfTest } from './plan-of-test.ts'

/** A trial of this plan alone, with the things of the kitchen that the presses name. */
const wholeOf = (plan: Plan): WholeTrial => ({
  trial: {
    ...{ id: plan.trialId, createdAt: plan.at, zone: plan.zone, planId: plan.id, seed: 7 },
    ...{ revision: 1, note: '' },
  },
  plans: [plan],
  ...{ sessions: [], events: [], ballots: [], photos: [], kitchen: kitchenOfTest },
})

/** What the notebook would refuse the plan for. */
function faultsOf(plan: Plan): unknown[] {
  const read = planShape.safeParse(plan)
  return [...(read.success ? [] : read.error.issues), ...referenceTroubles(wholeOf(plan))]
}

function remediesFor(plan: Plan): Remedy[] {
  const stepIds = plan.steps.map(({ id }) => id)
  const plain = [
    ...['match-water', 'add-flight', 'drop-flight', 'add-session', 'reverse-next'],
    ...['helper-keeps-key', 'tasters-silent', 'add-warm-up', 'one-dough', 'mix-apart'],
    ...['one-pair-of-hands', ...adviceCodes],
  ].map((code) => ({ code }) as Remedy)
  return [
    ...plain,
    ...(['flour', 'dough', 'piece'] as const).map((held) => ({ code: 'hold', held }) as const),
    { code: 'end-by-mark', stepIds },
    ...stepIds.map((stepId) => ({ code: 'end-by-loss', stepId }) as const),
    ...stepIds.map((stepId) => ({ code: 'end-by-colour', stepId }) as const),
    ...stepIds.map((stepId) => ({ code: 'equal-folds', stepId, repeats: 3 }) as const),
    ...plan.responses.map(({ id }) => ({ code: 'tasters-score', responseId: id }) as const),
    ...plan.formula.ingredients.flatMap(({ id }) =>
      (['dry-mix', 'stock'] as const).map(
        (by) => ({ code: 'share-dose', ingredientId: id, by }) as const,
      ),
    ),
  ]
}

test('after any row of presses, and any remedy on what they made, the record’s own shape takes the plan', () => {
  fc.assert(
    fc.property(somePresses, (row) => {
      const newId = counting('made')
      let plan = planOfTest()
      for (const { press, pick, amount } of row) {
        plan = press.press(plan, { pick, amount, newId })
        expect({ after: press.name, faults: faultsOf(plan) }).toEqual({
          after: press.name,
          faults: [],
        })
      }
      for (const remedy of remediesFor(plan)) {
        const mended = applyRemedy(plan, remedy)
        expect({ remedy, faults: faultsOf(mended) }).toEqual({ remedy, faults: [] })
        // Applied again, a remedy of one press changes nothing more but where it counts up or down.
        if (!/flight|session|reverse/.test(remedy.code))
          expect(applyRemedy(mended, remedy)).toEqual(mended)
      }
    }),
    { numRuns: 150, seed: 20261129 },
  )
})
