import { expect, test } from 'vitest'
import { page } from 'vitest/browser'
import { render } from 'vitest-browser-react'
import { PlanPlace } from '@/app/plan/plan-place.tsx'
import { ServicesContext } from '@/app/services/services.ts'
import { startingPlan } from '@/core/plan-edits/start/starting-plan.ts'
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

test('two windows that change the question at once: the page names both words, and the other one can be taken', async () => {
  const name = `clash-${chance.newId()}`
  const notebook = createNotebook(name, chance)
  const other = createNotebook(name, chance)
  const { newId, zone } = chance
  const trialId = await notebook.createTrial(startingPlan({ newId, at: chance.now(), zone }))
  const keep = notebook.keepPlan
  let met = false
  // The other window's write comes just before this one's, as it began from the same plan.
  notebook.keepPlan = async (plan, base) => {
    if (!met && base) await other.keepPlan({ ...base, question: 'How soft is it?' }, base)
    met = true
    return await keep(plan, base)
  }
  await render(
    <ServicesContext value={{ notebook, ...chance }}>
      <AtTrial trialId={trialId}>
        <PlanPlace />
      </AtTrial>
    </ServicesContext>,
  )
  await openParts()
  const question = page.getByRole('textbox', { name: 'Question', exact: true })
  await question.fill('How wet may it be?')
  await expect
    .element(
      page.getByText('“How wet may it be?” stands; the other window wrote “How soft is it?”.'),
    )
    .toBeVisible()
  await page.getByRole('button', { name: 'Take the other' }).click()
  await expect.element(question).toHaveValue('How soft is it?')
  const kept = async () => {
    const whole = await notebook.wholeTrial(trialId)
    return whole && planInForce(whole).question
  }
  await expect.poll(kept).toBe('How soft is it?')
})
