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

/** A plan with one place left in each part: 12 levels, 60 steps and 24 responses are the most that a trial file takes. */
function almostFull(): Plan {
  let plan = startingPlan({ newId, at: chance.now(), zone: chance.zone })
  while (plan.levels.length < 11) plan = withAnotherLevel(plan, newId())
  while (plan.steps.length < 59) plan = withStepOfKind(plan, 'fold', newId())
  while (plan.responses.length < 23)
    plan = { ...plan, responses: [...plan.responses, ownResponse(newId())] }
  return plan
}

test('the press that adds is offered up to the most a plan takes; from there a sentence says why not', async () => {
  const notebook = createNotebook(`full-${newId()}`, chance)
  const trialId = await notebook.createTrial(almostFull())
  await render(
    <ServicesContext value={{ notebook, ...chance }}>
      <AtTrial trialId={trialId}>
        <PlanPlace />
      </AtTrial>
    </ServicesContext>,
  )
  await openParts()
  const addLevel = page.getByRole('button', { name: 'Add a level' })
  await addLevel.click()
  await expect.element(page.getByText('A plan takes at most 12 levels.')).toBeVisible()
  expect(addLevel.query()).toBeNull()
  const addStep = page.getByLabelText('Add a step')
  await addStep.selectOptions('rest')
  await expect.element(page.getByText('A plan takes at most 60 steps.')).toBeVisible()
  expect(addStep.query()).toBeNull()
  const addResponse = page.getByRole('button', { name: 'one of my own' })
  await addResponse.click()
  await expect.element(page.getByText('A plan takes at most 24 responses.')).toBeVisible()
  expect(addResponse.query()).toBeNull()
  const counts = async () => {
    const whole = await notebook.wholeTrial(trialId)
    const plan = whole && planInForce(whole)
    return [plan?.levels.length, plan?.steps.length, plan?.responses.length]
  }
  await expect.poll(counts).toEqual([12, 60, 24])
})

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
