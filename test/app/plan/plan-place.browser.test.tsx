import { afterEach, beforeEach, expect, test } from 'vitest'
import { page, userEvent } from 'vitest/browser'
import { cleanup, render } from 'vitest-browser-react'
import '@/app/kit/look/tokens.css'
import '@/app/kit/look/base.css'
import { arrivingAt } from '@/app/kit/page/arriving-at.ts'
import { PlanPlace } from '@/app/plan/plan-place.tsx'
import { type Services, ServicesContext } from '@/app/services/services.ts'
import { startingPlan } from '@/core/plan-edits/start/starting-plan.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { createNotebook } from '@/notebook/create-notebook.ts'
import { AtTrial } from '../at-trial.tsx'
import { openParts } from './open-parts.ts'

let made = 0
const newId = () => `t${++made}-${crypto.randomUUID()}`
const complaints: string[] = []
const say = console.error
let notebook: ReturnType<typeof createNotebook>
let services: Services
let trialId = ''

beforeEach(async () => {
  complaints.length = 0
  console.error = (...words: unknown[]) => {
    complaints.push(words.map(String).join(' '))
  }
  const chance = { now: () => Date.now(), zone: 'Europe/Rome', newId, newSeed: () => 7 }
  notebook = createNotebook(`plan-${newId()}`, chance)
  services = { notebook, ...chance }
  trialId = await notebook.createTrial(startingPlan({ newId, at: chance.now(), zone: chance.zone }))
})

// What waits is written as the place is left; the notebook stays open for it, as in the app.
afterEach(async () => {
  await cleanup()
  console.error = say
  expect(complaints).toEqual([])
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

test('a valid number is kept soon after the last key, and the weigh sheet follows at once', async () => {
  const screen = await open()
  await field('Level 3').fill('80')
  // 80 % of 500 g flour.
  await expect.element(screen.getByRole('cell', { name: '400.0' })).toBeVisible()
  await expect
    .poll(async () => (await keptPlan()).levels.map(({ value }) => value))
    .toEqual([66, 70, 80])
})

test('what is to mend leads to its field', async () => {
  await open()
  await field('Level 2').fill('abc')
  await userEvent.tab()
  await page.getByRole('button', { name: /Level 2: what is typed/ }).click()
  await expect.poll(() => document.activeElement === field('Level 2').element()).toBe(true)
})

test('a removed ingredient comes back by undo', async () => {
  await open()
  await page.getByRole('button', { name: 'Remove Salt' }).click()
  await expect.element(field('Salt, percent of flour')).not.toBeInTheDocument()
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect.element(field('Salt, percent of flour')).toHaveValue('2')
  await expect.poll(async () => (await keptPlan()).formula.ingredients.length).toBe(4)
})

test('a step moves by Alt and an arrow key, and says where it is now', async () => {
  await open()
  const change = page.getByRole('button', { name: 'Change Fold' })
  await expect.element(change).toBeVisible()
  change.element().focus()
  await userEvent.keyboard('{Alt>}{ArrowUp}{/Alt}')
  await expect.element(page.getByText('Fold is now step 1 of 7.')).toBeInTheDocument()
  await expect.poll(async () => (await keptPlan()).steps[0]?.kind).toBe('fold')
})

test('a session begins when nothing is left to mend, and a later change makes the next revision', async () => {
  await open()
  for (const initials of ['MK', 'JT']) {
    await field('New taster').fill(initials)
    await page.getByRole('button', { name: 'Add taster' }).click()
    await expect.element(page.getByRole('group', { name: initials })).toBeVisible()
  }
  await page.getByRole('button', { name: 'Begin session 1' }).click()
  await expect.poll(() => location.hash).toBe(`#/trial/${trialId}/bench`)
  const whole = await notebook.wholeTrial(trialId)
  expect(whole?.sessions.map(({ number }) => number)).toEqual([1])
  expect(whole?.sessions[0]?.dealt.tasterOrders).toHaveLength(2)
  await field('Salt, percent of flour').fill('2.2')
  await expect.element(page.getByText('This is now revision 2.')).toBeVisible()
  // Plans are read by their ids, which say nothing of their order.
  const plans = (await notebook.wholeTrial(trialId))?.plans ?? []
  expect(plans.map(({ revision }) => revision).toSorted()).toEqual([1, 2])

  const second = page.getByRole('button', { name: 'Begin session 2' })
  await second.click()
  const asked = page.getByRole('dialog', { name: 'Session 1 is not done yet' })
  await expect.element(asked).toBeVisible()
  await asked.getByRole('button', { name: 'Not now' }).click()
  expect((await notebook.wholeTrial(trialId))?.sessions).toHaveLength(1)
})

test('a pasted formula shows what was understood before it is taken', async () => {
  await open()
  await page.getByRole('button', { name: 'Paste a formula' }).click()
  await page
    .getByRole('textbox', { name: /The formula as you have it/ })
    .fill('500 g bread flour\n1 cup milk\n350 g water\n10 g salt')
  const lines = page.getByRole('list', { name: 'What was understood' })
  await expect.element(lines).toHaveTextContent('spoons, cups and packets differ')
  // A formula of which a line was not read is another dough: it is not taken.
  const take = page.getByRole('button', { name: 'Use this formula' })
  await expect.element(take).toBeDisabled()
  await page.getByRole('button', { name: 'Leave out: 1 cup milk' }).click()
  await take.click()
  await expect
    .poll(async () => (await keptPlan()).formula.ingredients.map(({ name }) => name))
    .toEqual(['bread flour', 'water', 'salt'])
})

test('a pasted milk dough says that the factor will add water; a kind put right moves the percents', async () => {
  await open()
  await page.getByRole('button', { name: 'Paste a formula' }).click()
  await page
    .getByRole('textbox', { name: /The formula as you have it/ })
    .fill('Zorbel 500 g\nmilk 300 g\nrye sourdough starter 150 g')
  const dialog = page.getByRole('dialog')
  const use = page.getByRole('button', { name: 'Use this formula' })
  await expect.element(dialog).toHaveTextContent('No flour has a weight here')
  await expect.element(dialog).toHaveTextContent('This name is not known here')
  await expect.element(use).toBeDisabled()
  await page.getByRole('combobox', { name: 'Kind of Zorbel' }).selectOptions('flour')
  await expect.element(use).toBeDisabled()
  await expect.element(dialog).toHaveTextContent('Flour and water already mixed')
  await page.getByRole('button', { name: 'Leave out: rye sourdough starter 150 g' }).click()
  await expect.element(dialog).toHaveTextContent('milk 300 g, 60 %')
  await expect.element(dialog).toHaveTextContent('Water will be added at')
  await use.click()
  await expect.element(page.getByText('Formula replaced; Water added for the factor')).toBeVisible()
})

test('a way that leads to the fairness check arrives there, at the first thing to press', async () => {
  window.history.replaceState(arrivingAt('plan-fairness').state, '')
  try {
    await open()
    const part = () => document.querySelector('#plan-fairness')
    await expect.poll(() => part()?.contains(document.activeElement)).toBe(true)
    const { top = 1e9 } = part()?.getBoundingClientRect() ?? {}
    expect(Math.abs(top)).toBeLessThan(window.innerHeight / 2)
  } finally {
    window.history.replaceState(null, '')
  }
})
