import { expect, test } from 'vitest'
import { page } from 'vitest/browser'
import { render } from 'vitest-browser-react'
import { PlanPlace } from '@/app/plan/plan-place.tsx'
import { ServicesContext } from '@/app/services/services.ts'
import { withAnotherLevel } from '@/core/plan-edits/levels/measured-level.ts'
import { withStepOfKind } from '@/core/plan-edits/method/with-step.ts'
import { ownResponse } from '@/core/plan-edits/responses/response-presets.ts'
import { startingPlan } from '@/core/plan-edits/start/starting-plan.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { createNotebook } from '@/notebook/create-notebook.ts'
import { AtTrial } from '../at-trial.tsx'
import { openParts } from './open-parts.ts'

const chance = {
  now: () => Date.now(),
  newId: () => crypto.randomUUID(),
  newSeed: () => 7,
  zone: 'Europe/Rome',
}
const { newId } = chance

/** One part of a plan with one place left; the others as a trial starts, so that the page is drawn soon. */
const almostFull: Record<'levels' | 'steps' | 'responses', (plan: Plan) => Plan> = {
  levels: (plan) =>
    plan.levels.length < 11 ? almostFull.levels(withAnotherLevel(plan, newId())) : plan,
  steps: (plan) =>
    plan.steps.length < 59 ? almostFull.steps(withStepOfKind(plan, 'fold', newId())) : plan,
  responses: (plan) => ({
    ...plan,
    responses: [
      ...plan.responses,
      ...Array.from({ length: 23 - plan.responses.length }, () => ownResponse(newId())),
    ],
  }),
}

const addLevel = page.getByRole('button', { name: 'Add a level' })
const addStep = page.getByLabelText('Add a step')
const addResponse = page.getByRole('button', { name: 'one of my own' })

test.each([
  ['levels', 12, addLevel, () => addLevel.click()],
  ['steps', 60, addStep, () => addStep.selectOptions('rest')],
  ['responses', 24, addResponse, () => addResponse.click()],
] as const)(
  'the press that adds %s is offered up to the %d that a plan takes; from there a sentence says why not',
  async (part, most, press, add) => {
    const notebook = createNotebook(`full-${newId()}`, chance)
    const start = startingPlan({ newId, at: chance.now(), zone: chance.zone })
    const trialId = await notebook.createTrial(almostFull[part](start))
    await render(
      <ServicesContext value={{ notebook, ...chance }}>
        <AtTrial trialId={trialId}>
          <PlanPlace />
        </AtTrial>
      </ServicesContext>,
    )
    await openParts()
    await add()
    await expect.element(page.getByText(`A plan takes at most ${most} ${part}.`)).toBeVisible()
    expect(press.query()).toBeNull()
    const count = async () => {
      const whole = await notebook.wholeTrial(trialId)
      return whole && planInForce(whole)[part].length
    }
    await expect.poll(count).toBe(most)
  },
)

test('a pasted formula of more lines than a plan takes is said before it is taken, with what to do', async () => {
  const notebook = createNotebook(`pasted-${newId()}`, chance)
  const plan = startingPlan({ newId, at: chance.now(), zone: chance.zone })
  const trialId = await notebook.createTrial(plan)
  await render(
    <ServicesContext value={{ notebook, ...chance }}>
      <AtTrial trialId={trialId}>
        <PlanPlace />
      </AtTrial>
    </ServicesContext>,
  )
  await openParts()
  await page.getByRole('button', { name: 'Paste a formula' }).click()
  const seeds = Array.from({ length: 70 }, (_, at) => `${at + 1} g sesame seed no ${at + 1}x`)
  const field = page.getByLabelText('The formula as you have it')
  await field.fill(['1000 g flour', '650 g water', '20 g salt', '5 g yeast', ...seeds].join('\n'))
  const use = page.getByRole('button', { name: /^Use (this formula|it as weighed)$/ })
  await expect.element(page.getByText(/a plan takes at most 60/)).toBeVisible()
  await expect.element(use).toBeDisabled()
  await field.fill('1000 g flour\n650 g water\n20 g salt\n5 g yeast')
  await expect.element(use).toBeEnabled()
  const whole = await notebook.wholeTrial(trialId)
  expect(whole && planInForce(whole).formula).toEqual(plan.formula)
})
