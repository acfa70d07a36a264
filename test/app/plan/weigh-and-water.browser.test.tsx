import { afterEach, expect, test } from 'vitest'
import { cleanup, render } from 'vitest-browser-react'
import '@/app/kit/look/tokens.css'
import '@/app/kit/look/base.css'
import { PlanPlace } from '@/app/plan/plan-place.tsx'
import { ServicesContext } from '@/app/services/services.ts'
import { createNotebook } from '@/notebook/create-notebook.ts'
import loaf from '../../../trials/pan-loaf-salt.json?raw'
import { AtTrial } from '../at-trial.tsx'
import { openParts } from './open-parts.ts'

afterEach(cleanup)

/** The pan loaf before its first session, on one scale of 200 g, with milk from the fridge in place of its water. */
function milkLoafOnSmallScale(): string {
  const file = JSON.parse(loaf)
  const [plan] = file.plans
  for (const one of plan.formula.ingredients)
    if (one.kind === 'water')
      Object.assign(one, { kind: 'liquid', name: 'Milk', waterPercent: 88, celsius: 5 })
  const temperature = { wantedDoughCelsius: 24, flourCelsius: 20, roomCelsius: 20, matched: true }
  const kitchen = file.kitchen.filter(({ id }: { id: string }) => id !== 'club-bench-scale')
  const kitchenIds = plan.kitchenIds.filter((id: string) => id !== 'club-bench-scale')
  const plans = [{ ...plan, temperature, kitchenIds }]
  return JSON.stringify({ ...file, plans, kitchen, sessions: [], events: [], ballots: [] })
}

test('weights past the scale, and doughs without water, are said on the page', async () => {
  const chance = {
    ...{ now: () => Date.now(), zone: 'Europe/Rome', newSeed: () => 7 },
    newId: () => crypto.randomUUID(),
  }
  const notebook = createNotebook(`weigh-${chance.newId()}`, chance)
  expect(await notebook.importTrial(milkLoafOnSmallScale())).toMatchObject({ ok: true })
  const [trial] = await notebook.summaries()
  const screen = await render(
    <ServicesContext value={{ notebook, ...chance }}>
      <AtTrial trialId={trial?.trialId ?? ''}>
        <PlanPlace />
      </AtTrial>
    </ServicesContext>,
  )
  await openParts()
  await expect
    .element(
      screen.getByText(
        'on Small scale, which holds 200 g, weigh Bread flour and Milk in two goes each.',
      ),
    )
    .toBeVisible()
  await expect
    .element(
      screen.getByText(
        'No water goes in at the mix, so its temperature cannot set the dough’s. The doughs leave the mixer equally warm.',
      ),
    )
    .toBeVisible()
})
