import { expect, test } from 'vitest'
import { applyRemedy } from '@/core/fairness/apply-remedy.ts'
import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import { leftToMend } from '@/core/fairness/in-turn.ts'
import { offersOf } from '@/core/fairness/offers.ts'
import type { Remedy } from '@/core/fairness/remedy.ts'
import { lockedChanges } from '@/core/seal/locked-change.ts'
import { madePlan } from '../made-plan.ts'

const folds = { code: 'equal-folds' as const, stepId: 'fold', repeats: 3 }
const item: FairnessItem = {
  ...{ code: 'folds-done', key: 'folds-done/fold', when: 'after', severity: 'fix' },
  ...{
    accepted: false,
    amount: { value: 1, unit: 'count' },
    perLevel: null,
    path: '/steps/2/repeats',
  },
  data: { stepId: 'fold', kind: 'fold', low: 2, high: 3 },
  remedies: [folds, { code: 'practise-first' }],
}

test('a remedy the plan has followed is asked for no more; what the log shows stays', () => {
  const plan = madePlan()
  const advice = [{ code: 'practise-first' as const }]
  expect(offersOf(item.remedies, plan, false)).toEqual({ presses: [folds], inFollowUp: [], advice })
  const mended = applyRemedy(plan, folds)
  expect(offersOf(item.remedies, mended, false)).toEqual({ presses: [], inFollowUp: [], advice })
})

test('what the lock forbids is no press of this trial but one of a trial that follows', () => {
  const more = ['add-session', 'reverse-next'].map((code) => ({ code }) as Remedy)
  const plan = madePlan()
  expect(offersOf([...more, folds], plan, true)).toEqual({
    presses: [folds],
    inFollowUp: more,
    advice: [],
  })
  expect(offersOf(more, plan, false).presses).toEqual(more)
})

test('no remedy is offered as a press that the lock would refuse, whatever the plan', () => {
  const codes: Remedy[] = [
    ...['match-water', 'add-flight', 'drop-flight', 'add-session', 'reverse-next'],
    ...['helper-keeps-key', 'tasters-silent', 'add-warm-up', 'one-pair-of-hands'],
  ].map((code) => ({ code }) as Remedy)
  const plan = madePlan()
  const scored = plan.responses.map(
    ({ id }) => ({ code: 'tasters-score', responseId: id }) as const,
  )
  for (const remedy of offersOf([...codes, ...scored], plan, true).presses) {
    const next = applyRemedy(plan, remedy)
    expect(next).not.toEqual(plan)
    expect(lockedChanges(plan, next)).toEqual([])
  }
})

test('how much evidence there is, is left to the verdict; the rest is to mend', () => {
  const once: FairnessItem = {
    ...{ code: 'one-session', key: 'one-session', when: 'before', severity: 'fix' },
    ...{ accepted: false, amount: null, perLevel: null, path: '/plannedSessions', remedies: [] },
    data: { unit: 'batch', flights: 1 },
  }
  expect(leftToMend([once, item])).toEqual([item])
})
