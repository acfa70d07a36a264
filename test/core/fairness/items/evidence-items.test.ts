import { expect, test } from 'vitest'
import { designOfPlan } from '@/core/design/design-of-plan.ts'
import { detectable } from '@/core/design/detectable.ts'
import { commonSpread } from '@/core/design/spread.ts'
import { whatShows } from '@/core/design/what-shows.ts'
import { fairnessOfTrial } from '@/core/fairness/fairness-of-trial.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { sampleTrial } from '../../findings/sample-trial.ts'
import { itemOf, itemsOf } from '../fair-plan.ts'

const whole = sampleTrial('focaccia-hydration')
const plan = planInForce(whole)

/** Tasters and doughs that scatter half as much as is common. */
const { residual, tasterLevel, piece, batch } = commonSpread
const calm = {
  residual: residual / 2,
  tasterLevel: tasterLevel / 2,
  piece: piece / 2,
  batch: batch / 2,
}

test('what the design can answer rests on the scatter that was learned of its tasters', () => {
  const asked = { kitchen: whole.kitchen, sessions: whole.sessions }
  const common = itemsOf(plan, asked)
  const learned = itemsOf(plan, { ...asked, spread: calm })
  for (const code of ['few-tasters', 'few-sessions'] as const) {
    const [usual, own] = [common, learned].map((items) => itemOf(items, code)?.data.wouldShow)
    // Half the scatter shows half the difference, within the search of it.
    expect((own ?? 0) / (usual ?? 1)).toBeCloseTo(0.5, 3)
  }
})

test('a trial that was worked says the same as the plan and its reach', () => {
  const found = itemOf(fairnessOfTrial(whole, null, calm), 'few-sessions')
  const reach = detectable(designOfPlan(plan, calm)).theFactor
  expect(found?.data.wouldShow).toBeCloseTo(whatShows(reach, plan) ?? 0, 9)
})
