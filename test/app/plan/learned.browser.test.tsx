import { afterEach, beforeEach, expect, test } from 'vitest'
import { page } from 'vitest/browser'
import { cleanup, render } from 'vitest-browser-react'
import '@/app/kit/look/tokens.css'
import '@/app/kit/look/base.css'
import { MannerContext } from '@/app/kit/field/manner-context.ts'
import { PlanPlace } from '@/app/plan/plan-place.tsx'
import { type Services, ServicesContext } from '@/app/services/services.ts'
import { plainManner } from '@/core/units/manner.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { createNotebook } from '@/notebook/create-notebook.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import focaccia from '../../../trials/focaccia-hydration.json?raw'
import loaf from '../../../trials/pan-loaf-salt.json?raw'
import { mixingDay } from '../../core/learned/mixing-day.ts'
import { AtTrial } from '../at-trial.tsx'
import { openParts } from './open-parts.ts'

let made = 0
const newId = () => `l${++made}-${crypto.randomUUID()}`
const complaints: string[] = []
const say = console.error
let notebook: ReturnType<typeof createNotebook>
let services: Services

beforeEach(() => {
  complaints.length = 0
  console.error = (...words: unknown[]) => {
    complaints.push(words.map(String).join(' '))
  }
  const chance = { now: () => Date.now(), zone: 'Europe/Rome', newId, newSeed: () => 7 }
  notebook = createNotebook(`learned-${newId()}`, chance)
  services = { notebook, ...chance }
})

// What waits is written as the place is left; the notebook stays open for it, as in the app.
afterEach(async () => {
  await cleanup()
  console.error = say
  expect(complaints).toEqual([])
})

const open = async (trialId: string, unit: 'celsius' | 'fahrenheit' = 'celsius') => {
  const screen = await render(
    <ServicesContext value={services}>
      <MannerContext value={{ ...plainManner, temperature: unit }}>
        <AtTrial trialId={trialId}>
          <PlanPlace />
        </AtTrial>
      </MannerContext>
    </ServicesContext>,
  )
  await openParts()
  return screen
}

const mixed = (levels: number[]) =>
  mixingDay(
    'mixing',
    levels.map((hydration) => ({ hydration, waterCelsius: 30, doughCelsius: 31.7 })),
  )

test('the water is planned with the work that the log taught, and says so', async () => {
  expect(await notebook.importTrial(writeTrialFile(mixed([65])))).toMatchObject({ ok: true })
  const screen = await open('mixing')
  // 62.54053 less the wetting heat of 10.3565, worked in the test of the mixing work: 52.18.
  await expect
    .element(
      screen.getByText('Mixing work learned from one batch: 52.2 kJ per kg of flour.').first(),
    )
    .toBeVisible()
})

test('what would show rests on the scatter of these tasters, and says so', async () => {
  for (const text of [focaccia, loaf]) expect((await notebook.openSample(text)).ok).toBe(true)
  const [first] = await notebook.summaries()
  const screen = await open(first?.trialId ?? '')
  await expect
    .element(
      screen.getByText('With the scatter learned from two finished trials of these tasters.'),
    )
    .toBeVisible()
})

test('temperatures of the plan are typed in °F and kept in °C', async () => {
  expect(await notebook.importTrial(writeTrialFile(mixed([65])))).toMatchObject({ ok: true })
  await open('mixing', 'fahrenheit')
  const wanted = page.getByRole('textbox', { name: 'Wanted dough', exact: true })
  // 25 °C = 77 °F; 75.2 °F = 24 °C.
  await expect.element(wanted).toHaveValue('77')
  await wanted.fill('75.2')
  await expect
    .poll(async () => {
      const whole = await notebook.wholeTrial('mixing')
      return whole && planInForce(whole).temperature?.wantedDoughCelsius
    })
    .toBe(24)
  await wanted.fill('200')
  wanted.element().blur()
  await expect.element(wanted).toHaveAccessibleDescription(/from −22 to 140 °F/)
})
