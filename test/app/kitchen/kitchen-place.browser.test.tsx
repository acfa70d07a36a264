import { afterEach, beforeEach, expect, test } from 'vitest'

import { cleanup, render } from 'vitest-browser-react'
import '@/app/kit/look/tokens.css'
import '@/app/kit/look/base.css'
import { MannerContext } from '@/app/kit/field/manner-context.ts'
import { KitchenPlace } from '@/app/kitchen/kitchen-place.tsx'
import { type Services, ServicesContext } from '@/app/services/services.ts'
import { plainManner } from '@/core/units/manner.ts'
import { createNotebook } from '@/notebook/create-notebook.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import focaccia from '../../../trials/focaccia-hydration.json?raw'
import loaf from '../../../trials/pan-loaf-salt.json?raw'
import { mixingDay } from '../../core/learned/mixing-day.ts'

let made = 0
const newId = () => `k${++made}-${crypto.randomUUID()}`
const complaints: string[] = []
const say = console.error
let notebook: ReturnType<typeof createNotebook>
let services: Services

beforeEach(async () => {
  complaints.length = 0
  console.error = (...words: unknown[]) => {
    complaints.push(words.map(String).join(' '))
  }
  const chance = { now: () => Date.now(), zone: 'Europe/Rome', newId, newSeed: () => 7 }
  notebook = createNotebook(`kitchen-${newId()}`, chance)
  services = { notebook, ...chance }
  for (const text of [focaccia, loaf]) expect((await notebook.openSample(text)).ok).toBe(true)
  const day = mixingDay(
    'mixing',
    [60, 65, 70].map((hydration) => ({ hydration, waterCelsius: 30, doughCelsius: 31.7 })),
    { kitchenIds: ['mixer-1'] },
  )
  expect(await notebook.importTrial(writeTrialFile(day))).toMatchObject({ ok: true })
})

// What waits is written as the place is left; the notebook stays open for it, as in the app.
afterEach(async () => {
  await cleanup()
  console.error = say
  expect(complaints).toEqual([])
})

const open = (unit: 'celsius' | 'fahrenheit' = 'celsius') =>
  render(
    <ServicesContext value={services}>
      <MannerContext value={{ ...plainManner, temperature: unit }}>
        <KitchenPlace />
      </MannerContext>
    </ServicesContext>,
  )

// The three doughs, each at 31.7 °C from water of 30 °C, flour, room and a bowl of 0.45 kJ/K at 20 °C; a bowl that is entered
// leaves 2.4 of the room's 3.2 kJ/K; wetting 10.36 kJ: 31.7 (1.75 + 0.45 + 2.4 + 4.186 w) − 20 · 4.6 − 125.58 w − 10.36 =
// 43.46 + 7.1162 w kJ: 47.73, 48.09, 48.44, mean 48.1. Three doughs are too few for a slope.
test('a mixer’s learned work stands with its spread, its doughs and the way to its trial, and is used by one press', async () => {
  const screen = await open()
  await expect
    .element(screen.getByText(/Mixing work 48\.1 kJ per kg of flour, give or take 0\.4/))
    .toHaveTextContent('learned from three batches in one trial.')
  await screen.getByRole('button', { name: 'Use 48.1 kJ per kg for Hands' }).click()
  await expect.element(screen.getByText('In use in this entry.')).toBeVisible()
  const mixer = (await notebook.kitchen()).find(({ id }) => id === 'mixer-1')
  expect(mixer).toMatchObject({ workKilojoulesPerKilogram: 48.1 })
  await screen.getByRole('button', { name: 'Where from: Hands' }).click()
  await expect
    .element(screen.getByRole('link', { name: 'Does more water open the crumb?' }))
    .toHaveAttribute('href', '#/trial/mixing/plan')
})

test('the panel says how it scatters and on how many scores that rests', async () => {
  const screen = await open()
  // 3 sessions × 5 levels × 8 tasters and the scores of the loaf's one session stand in two finished trials.
  await expect
    .element(screen.getByText(/On nine points one answer scatters by/))
    .toHaveTextContent(/scores in two finished trials/)
})

test('temperatures stand and are typed in the chosen unit', async () => {
  const screen = await open('fahrenheit')
  // 12 °C = 53.6 °F, 48 °C = 118.4 °F.
  await expect.element(screen.getByText('53.6 to 118.4 °F')).toBeVisible()
  await screen.getByRole('button', { name: 'Change Kitchen tap' }).click()
  const coldest = screen.getByRole('textbox', { name: 'Coldest' })
  await expect.element(coldest).toHaveValue('53.6')
  await coldest.fill('50')
  await screen.getByRole('button', { name: 'Keep', exact: true }).click()
  await expect
    .poll(async () => (await notebook.kitchen()).find(({ id }) => id === 'club-tap'))
    .toMatchObject({ coldestCelsius: 10, warmestCelsius: 48 })
})

test('units and figures are chosen here and kept', async () => {
  const screen = await open()
  await screen.getByRole('radio', { name: '°F' }).click()
  await expect.poll(async () => (await notebook.settings()).temperatureUnit).toBe('fahrenheit')
  await screen.getByRole('radio', { name: 'ounces' }).click()
  await expect
    .poll(async () => (await notebook.settings()).figures)
    .toEqual({ mass: 'ounce', hours: '24', decimal: 'point' })
})

test('an entry left half filled can be had back, an untouched one is let go', async () => {
  const screen = await open()
  await screen.getByRole('button', { name: 'Add a scale' }).click()
  await screen.getByRole('button', { name: 'Add a tap' }).click()
  await expect.element(screen.getByRole('form', { name: 'Entry: a tap' })).toBeVisible()
  expect(screen.container.textContent).not.toContain('Set aside')
  await screen.getByLabelText('Name').fill('Cellar tap')
  await screen.getByRole('button', { name: 'Add a thermometer' }).click()
  await expect.element(screen.getByText('Set aside: a tap, half filled')).toBeVisible()
  await screen.getByRole('button', { name: 'Have it back' }).click()
  await expect.element(screen.getByLabelText('Name')).toHaveValue('Cellar tap')
  await screen.getByRole('button', { name: 'Leave it' }).click()
  await expect.element(screen.getByText('Set aside: a tap, half filled')).toBeVisible()
})
