import { expect, test } from 'vitest'
import { applyRemedy } from '@/core/fairness/apply-remedy.ts'
import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import { leftToMend } from '@/core/fairness/in-turn.ts'
import { stillToApply } from '@/core/fairness/still-to-apply.ts'
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
  expect(stillToApply([item], plan)).toEqual([item])
  const [left] = stillToApply([item], applyRemedy(plan, folds))
  expect(left?.remedies).toEqual([{ code: 'practise-first' }])
  expect(left?.severity).toBe('fix')
})

test('how much evidence there is, is left to the verdict; the rest is to mend', () => {
  const once: FairnessItem = {
    ...{ code: 'one-session', key: 'one-session', when: 'before', severity: 'fix' },
    ...{ accepted: false, amount: null, perLevel: null, path: '/plannedSessions', remedies: [] },
    data: { unit: 'batch', flights: 1 },
  }
  expect(leftToMend([once, item])).toEqual([item])
})
