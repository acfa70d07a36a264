import { afterEach, expect, test } from 'vitest'
import { page } from 'vitest/browser'
import { cleanup, render } from 'vitest-browser-react'
import { PlanPlace } from '@/app/plan/plan-place.tsx'
import { ServicesContext } from '@/app/services/services.ts'
import { startingPlan } from '@/core/plan-edits/start/starting-plan.ts'
import { dealSession } from '@/core/session/deal-session.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { createNotebook } from '@/notebook/create-notebook.ts'
import { AtTrial } from '../at-trial.tsx'
import { openParts } from './open-parts.ts'

let made = 0
const newId = () => `k${++made}-${crypto.randomUUID()}`
const chance = { now: () => Date.now(), zone: 'Europe/Rome', newId, newSeed: () => 7 }

afterEach(cleanup)

/** A trial of one planned session, whose first dough is in the mixer. */
async function lockedTrial() {
  const notebook = createNotebook(`locked-${newId()}`, chance)
  const start = startingPlan({ newId, at: chance.now(), zone: chance.zone })
  const plan = { ...start, plannedSessions: 1 }
  const trialId = await notebook.createTrial(plan)
  const dealt = dealSession({
    ...{ plan, trialSeed: 7, number: 1, earlier: [] },
    ...{ at: chance.now(), zone: chance.zone, newId },
  })
  if (!dealt.ok) throw new Error(dealt.reason)
  await notebook.beginSession(dealt.session)
  const [mix] = plan.steps
  const [batch] = dealt.session.batches
  const ids = { trialId, sessionId: dealt.session.id }
  await notebook.logAll([
    { ...ids, kind: 'lock', about: { kind: 'trial', id: trialId } },
    {
      ...{ ...ids, kind: 'step-started', stepId: mix?.id ?? '', repeat: 1 },
      about: { kind: 'batch', id: batch?.id ?? '' },
    },
  ])
  return { notebook, trialId }
}

test('a locked plan offers another session in a trial that follows, and keeps what is changed beside it', async () => {
  const { notebook, trialId } = await lockedTrial()
  const screen = await render(
    <ServicesContext value={{ notebook, ...chance }}>
      <AtTrial trialId={trialId}>
        <PlanPlace />
      </AtTrial>
    </ServicesContext>,
  )
  await openParts()
  const more = screen.getByRole('button', { name: 'Add a session, in a follow-up' })
  await expect.element(more.first()).toBeVisible()
  expect(screen.getByRole('button', { name: 'Add a session', exact: true }).query()).toBeNull()

  await page.getByRole('textbox', { name: 'Question', exact: true }).fill('How wet may it be?')
  const kept = async () => {
    const whole = await notebook.wholeTrial(trialId)
    if (!whole) throw new Error('the trial is gone')
    return planInForce(whole)
  }
  await expect.poll(async () => (await kept()).question).toBe('How wet may it be?')
  expect((await kept()).plannedSessions).toBe(1)

  await more.first().click()
  const followers = async () => {
    const lines = await notebook.summaries()
    const wholes = await Promise.all(lines.map((line) => notebook.wholeTrial(line.trialId)))
    return wholes.flatMap((whole) => (whole?.trial.follows ? [whole] : []))
  }
  await expect.poll(async () => (await followers()).length).toBe(1)
  const [next] = await followers()
  if (!next) throw new Error('nothing follows')
  expect(next.trial.follows).toEqual({ trialId, how: 'repeats' })
  expect(planInForce(next)).toMatchObject({ plannedSessions: 2, question: 'How wet may it be?' })
})
