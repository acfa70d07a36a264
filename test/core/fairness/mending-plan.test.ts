import { expect, test } from 'vitest'
import { mendingPlan } from '@/core/fairness/apply-remedy.ts'
import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { sampleTrial } from '../findings/sample-trial.ts'

const plan = planInForce(sampleTrial('focaccia-hydration'))

test('mending applies one press of every open item and leaves the rest of the plan', () => {
  const item = {
    code: 'key-with-baker',
    key: 'key-with-baker',
    when: 'before',
    accepted: false,
    amount: null,
    perLevel: null,
    data: {},
    path: '',
  }
  const items = [
    { ...item, severity: 'fix', remedies: [{ code: 'more-tasters' }, { code: 'add-session' }] },
    { ...item, severity: 'fix', remedies: [{ code: 'practise-first' }] },
    { ...item, severity: 'know', remedies: [{ code: 'add-flight' }] },
  ] as unknown as FairnessItem[]
  expect(mendingPlan(plan, items)).toEqual({ ...plan, plannedSessions: plan.plannedSessions + 1 })
  // How much evidence there is, is no rider: repeating mends it, not another plan.
  const once = items.map((one) => ({ ...one, code: 'one-session' })) as FairnessItem[]
  expect(mendingPlan(plan, once)).toEqual(plan)
})
