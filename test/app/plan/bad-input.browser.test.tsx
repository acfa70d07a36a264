import { afterEach, beforeEach, expect, test } from 'vitest'
import { page, userEvent } from 'vitest/browser'
import { cleanup, render } from 'vitest-browser-react'
import '@/app/kit/look/tokens.css'
import '@/app/kit/look/base.css'
import { PlanPlace } from '@/app/plan/plan-place.tsx'
import { type Services, ServicesContext } from '@/app/services/services.ts'
import { startingPlan } from '@/core/plan-edits/start/starting-plan.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { createNotebook } from '@/notebook/create-notebook.ts'
import { AtTrial } from '../at-trial.tsx'
import { openParts } from './open-parts.ts'

let made = 0
const newId = () => `b${++made}-${crypto.randomUUID()}`
const faults: string[] = []
const say = console.error
const hear = (event: ErrorEvent | PromiseRejectionEvent) =>
  faults.push(String('reason' in event ? event.reason : event.message))
let notebook: ReturnType<typeof createNotebook>
let services: Services
let trialId = ''

beforeEach(async () => {
  faults.length = 0
  console.error = (...words: unknown[]) => faults.push(words.map(String).join(' '))
  window.addEventListener('error', hear)
  window.addEventListener('unhandledrejection', hear)
  const chance = { now: () => Date.now(), zone: 'Europe/Rome', newId, newSeed: () => 7 }
  notebook = createNotebook(`bad-${newId()}`, chance)
  services = { notebook, ...chance }
  const plan = startingPlan({ newId, at: chance.now(), zone: chance.zone })
  const scale = { ...{ id: newId(), kind: 'scale' as const, name: 'Bench scale' } }
  await notebook.keepKitchenThing({ ...scale, resolutionGrams: 1, capacityGrams: 5000 })
  const taster = { id: newId(), kind: 'taster' as const, initials: 'MK' }
  await notebook.keepKitchenThing(taster)
  trialId = await notebook.createTrial({
    ...plan,
    kitchenIds: [scale.id],
    tasters: [{ tasterId: taster.id, knows: false }],
  })
})

// What waits is written as the place is left; the notebook stays open for it, as in the app.
afterEach(async () => {
  await cleanup()
  console.error = say
  window.removeEventListener('error', hear)
  window.removeEventListener('unhandledrejection', hear)
  expect(faults).toEqual([])
})

const open = async () => {
  const screen = await render(
    <ServicesContext value={services}>
      <AtTrial trialId={trialId}>
        <PlanPlace />
      </AtTrial>
    </ServicesContext>,
  )
  await openParts()
  return screen
}

const keptPlan = async () => {
  const whole = await notebook.wholeTrial(trialId)
  if (!whole) throw new Error('the trial is gone')
  return planInForce(whole)
}

const field = (name: string) => page.getByRole('textbox', { name, exact: true })
const begin = () => page.getByRole('button', { name: /^Begin session/ })

type Typed = [field: string, text: string, mend: RegExp]

/** What is typed where, and the mend that the message names; in one page each field once. */
const cannotStand: [string, ...Typed[]][] = [
  [
    'first',
    ['Question', '', /Write the question/],
    ['Flour of a batch', '0', /above 0/],
    ['Bread flour, percent of flour', '-1', /from 0/],
    ['Salt, percent of flour', '5000', /to 1,?000 %/],
    ['Instant yeast, percent of flour', '', /number|empty/i],
    ['Level 1', '🍞', /number/i],
    ['Level 2', '70 or so', /number/i],
    ['Level 3', '', /number|empty/i],
    ['Flights a session', '2,5', /whole number/],
    ['Sessions planned', '-1', /whole number/],
    ['Wanted dough', '400', /to 60/],
  ],
  [
    'second',
    ['Question', '   ', /Write the question/],
    ['Flour of a batch', '-500', /above 0/],
    ['Salt, percent of flour', 'NaN', /number/i],
    ['Level 1', '1e308', /from −100,?000 to 100,?000/],
    ['Flights a session', '0', /whole number/],
  ],
  [
    'third',
    ['Flour of a batch', '1e308', /above 0, up to 1,?000,?000 g/],
    ['Salt, percent of flour', 'Infinity', /number/i],
    ['Level 1', '-1e308', /from −100,?000 to 100,?000/],
  ],
]

async function type(name: string, text: string): Promise<void> {
  await field(name).fill(text)
  await userEvent.tab()
}

/** The words that stand at a field for whoever cannot see them beside it. */
const wordsAt = (name: string) =>
  (field(name).element().getAttribute('aria-describedby') ?? '')
    .split(' ')
    .map((id) => document.getElementById(id)?.textContent ?? '')
    .join(' ')

test.each(cannotStand)(
  '%s texts that cannot stand each have their mend at the field, are out of the plan, and are there after a reload',
  async (_, ...typed) => {
    const first = await open()
    await expect.element(begin()).toBeVisible()
    const before = await keptPlan()
    for (const [name, text, mend] of typed) {
      await type(name, text)
      await expect.element(field(name)).toHaveAttribute('aria-invalid', 'true')
      expect(wordsAt(name), `${name}: ${text}`).toMatch(mend)
    }
    expect({ ...(await keptPlan()), at: 0 }).toEqual({ ...before, at: 0 })
    await first.unmount()
    await open()
    for (const [name, text] of typed) await expect.element(field(name)).toHaveValue(text)
    await expect.element(begin()).not.toBeInTheDocument()
    expect({ ...(await keptPlan()), at: 0 }).toEqual({ ...before, at: 0 })
  },
)

test.each([
  ['Question', ''],
  ['Salt, percent of flour', '5000'],
  ['Level 2', '70 or so'],
  ['Sessions planned', '-1'],
])('a wrong %s alone keeps a session from beginning until it is put right', async (name, text) => {
  await open()
  await expect.element(begin()).toBeVisible()
  const element = field(name).element()
  if (!(element instanceof HTMLInputElement || element instanceof HTMLTextAreaElement))
    throw new Error(`${name} is no field`)
  const right = element.value
  await type(name, text)
  await expect.element(begin()).not.toBeInTheDocument()
  await type(name, right)
  await expect.element(begin()).toBeVisible()
})

test.each(['20', '160'])(
  'a hydration of %s percent is asked about, not forbidden',
  async (text) => {
    await open()
    await field('Level 1').fill(text)
    await expect.element(page.getByRole('list', { name: 'To think about' })).toHaveTextContent(text)
    await expect.poll(async () => (await keptPlan()).levels[0]?.value).toBe(Number(text))
  },
)

test('a decimal comma is a decimal point', async () => {
  await open()
  await field('Level 1').fill('65,5')
  await expect.poll(async () => (await keptPlan()).levels[0]?.value).toBe(65.5)
  await expect.element(field('Level 1')).not.toHaveAttribute('aria-invalid', 'true')
})

test('levels that are the same, or weigh the same on the scale, are stopped at the field', async () => {
  await open()
  await field('Level 1').fill('70.0')
  await expect.element(field('Level 2')).toHaveAttribute('aria-invalid', 'true')
  // 70.05 % of 500 g is 350.25 g: on a 1 g scale the same 350 g as 70 %.
  await field('Level 1').fill('70.05')
  const mends = page.getByRole('list', { name: 'To mend' })
  await expect
    .element(mends)
    .toHaveTextContent('gets the same 350 g of Water as 70.05, in steps of 1 g')
  await expect.element(field('Level 2')).toHaveAttribute('aria-invalid', 'true')
  await field('Level 1').fill('66')
  await expect.element(mends).not.toBeInTheDocument()
})

test('more pieces than the dough gives are stopped at the pieces', async () => {
  await open()
  await page.getByRole('radio', { name: 'from its pieces' }).click()
  await field('Flights a session').fill('9')
  // The batch keeps up with the pieces that are asked; one that is then typed smaller does not.
  await expect.element(field('Pieces from a batch')).toHaveValue('9')
  await field('Pieces from a batch').fill('3')
  await expect.element(field('Pieces from a batch')).toHaveAttribute('aria-invalid', 'true')
})

test('the control taken out leaves no level marked and comes back with its mark', async () => {
  await open()
  await page.getByRole('button', { name: 'Remove level 70' }).click()
  await expect
    .poll(async () => (await keptPlan()).levels.map(({ control }) => control))
    .toEqual([false, false])
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect
    .poll(async () => (await keptPlan()).levels.find(({ control }) => control)?.value)
    .toBe(70)
})
