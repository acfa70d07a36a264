import axe from 'axe-core'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { page } from 'vitest/browser'
import { cleanup, render } from 'vitest-browser-react'
import '@/app/kit/look/tokens.css'
import '@/app/kit/look/base.css'
import { HousePlace } from '@/app/house/house-place.tsx'
import { type Services, ServicesContext } from '@/app/services/services.ts'
import { adoptLevel } from '@/core/house/adopt-level.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { createNotebook } from '@/notebook/create-notebook.ts'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'
import focaccia from '../../../trials/focaccia-hydration.json?raw'

let made = 0
const newId = () => `h${++made}-${crypto.randomUUID()}`
let notebook: ReturnType<typeof createNotebook>
let services: Services

beforeEach(async () => {
  const chance = { now: () => 1_770_000_000_000, zone: 'Europe/Rome', newId, newSeed: () => 7 }
  notebook = createNotebook(`house-${newId()}`, chance)
  services = { notebook, ...chance }
  const read = readTrialFile(focaccia)
  if (!read.ok) throw new Error('no trial')
  const plan = planInForce(read.whole)
  const level = plan.levels.find(({ value }) => value === 70)
  if (!level) throw new Error('no level')
  const restsOn = {
    ...{ trialId: read.whole.trial.id, question: plan.question, level: '70 %' },
    ...{ because: 'easiest' as const, sessions: 3, tasters: 8, said: '' },
  }
  const adopted = adoptLevel(plan, level, restsOn, { at: 1_769_000_000_000, zone: 'Europe/Rome' })
  if (!adopted.ok) throw new Error(adopted.trouble.reason)
  await notebook.keepHouse({
    ...{ id: 'house-1', name: 'Club focaccia, 70 %', createdAt: 1_769_000_000_000 },
    revisions: [adopted.revision],
  })
})

afterEach(cleanup)

const open = () =>
  render(
    <ServicesContext value={services}>
      <HousePlace houseId="house-1" />
    </ServicesContext>,
  )

test('two pans of 30 × 40 cm at 0.7 g a cm² are 1680 g of dough, and the yield is kept as a revision', async () => {
  const screen = await open()
  await expect.element(page.getByRole('heading', { name: 'Club focaccia, 70 %' })).toBeVisible()
  await page.getByText('Pans', { exact: true }).click()
  await page.getByRole('textbox', { name: 'Pans' }).fill('2')
  await expect
    .element(screen.container)
    .toHaveTextContent('For two pans of 40 × 30 cm, 840 g each.')
  // 70 %: 100 + 70 + 2.2 + 0.35 + 4 parts of 1680 g: flour 951.6 g, a fifth of it in the poolish.
  const table = page.getByRole('table', { name: 'What to weigh' })
  await expect.element(table).toHaveTextContent('Dough, 70 % water in all1680')
  await expect.element(table).toHaveTextContent('Strong wheat flour20190')
  await page.getByRole('button', { name: 'Keep this yield' }).click()
  await expect.poll(async () => (await notebook.house('house-1'))?.revisions.length).toBe(2)
  await expect.element(page.getByRole('heading', { name: 'History', exact: true })).toBeVisible()

  // The formula is changed with its reason, and the state before taken up again: nothing of the history goes.
  await page.getByRole('button', { name: /^Change it/ }).click()
  const water = page.getByRole('textbox', { name: 'Water', exact: true })
  await water.fill('wet')
  const next = page.getByRole('button', { name: 'Keep as the next state' })
  await expect.element(next).toBeDisabled()
  await water.fill('72')
  await page.getByRole('textbox', { name: 'Why (if you like)' }).fill('a thirstier bag')
  await next.click()
  await expect.element(table).toHaveTextContent('Dough, 72 % water in all1680')
  await expect.element(page.getByText('Changed: the formula. a thirstier bag')).toBeVisible()
  await page
    .getByRole('button', { name: /^Take up the state/ })
    .first()
    .click()
  await expect.element(table).toHaveTextContent('Dough, 70 % water in all1680')
  await expect.poll(async () => (await notebook.house('house-1'))?.revisions.length).toBe(4)
  await page.getByText('by its floor', { exact: true }).click()
  await expect.element(screen.container).toHaveTextContent('For two pans of 1200 cm², 840 g each.')
})

test('a warmer room asks for colder water', async () => {
  const screen = await open()
  const water = async () =>
    Number(/Water at (−?[\d.]+)/u.exec(screen.container.textContent ?? '')?.[1])
  await expect.poll(water).toBeGreaterThan(0)
  const before = await water()
  await page.getByRole('textbox', { name: 'Room' }).fill('28')
  await expect.poll(water).toBeLessThan(before)
})

test('the next question opens a plan around this dough', async () => {
  await open()
  await page.getByRole('button', { name: 'Ask the next question' }).click()
  await expect.poll(async () => (await notebook.summaries()).length).toBe(1)
  const [line] = await notebook.summaries()
  const plan = planInForce((await notebook.wholeTrial(line?.trialId ?? '')) ?? never())
  expect(plan.formula.preferments.map(({ name }) => name)).toEqual(['Poolish'])
  expect(plan.steps.map(({ name }) => name)).toContain('Bake')
})

const never = (): never => {
  throw new Error('no trial')
}

test('the page has no barrier that can be found by rule, and is as wide as a phone', async () => {
  await page.viewport(360, 740)
  const screen = await open()
  await expect.element(page.getByRole('heading', { name: 'Method' })).toBeVisible()
  const { violations } = await axe.run(screen.container, { rules: { region: { enabled: false } } })
  expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([])
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(360)
})
