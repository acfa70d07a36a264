import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { draftKept } from './draft-kept.ts'
import { newTrial, openPlanParts } from './new-trial.ts'
import { openBrowser, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

test('a new trial is kept: it opens at its plan and stands in the book after a reload', async () => {
  const { page, troubles } = await visit(browser, baseUrl)
  await page.goto(baseUrl)
  await newTrial(page)
  await page.waitForURL(/#\/trial\/[\w-]+\/plan$/)
  await page.getByRole('link', { name: 'Notebook' }).click()
  await page.reload()
  const book = page.getByRole('list', { name: 'Trials' })
  expect(await book.getByRole('link').first().textContent()).toBe(
    'How wet should our country loaf be?',
  )
  expect(troubles).toEqual([])
  await page.context().close()
})

test('a trial is thrown out, and comes back in its place by one press', async () => {
  const { page } = await visit(browser, baseUrl)
  await page.goto(baseUrl)
  await newTrial(page)
  await page.waitForURL(/plan$/)
  await page.goto(baseUrl)
  const row = page.getByRole('list', { name: 'Trials' }).locator('> li')
  const focused = () => page.evaluate(() => document.activeElement?.textContent)
  const asked = 'How wet should our country loaf be?'
  // The whole row is the press that opens the trial.
  await row.click()
  await page.waitForURL(/#\/trial\/[\w-]+\/plan$/)
  await page.goBack()
  await row.getByRole('button', { name: /^More: / }).click()
  await row.getByRole('button', { name: /^Throw out: / }).click()
  await expect.poll(focused, { timeout: 10_000 }).toBe(`Thrown out: ${asked}`)
  expect(await row.count()).toBe(1)
  await row.getByRole('button', { name: 'Undo' }).click()
  await expect.poll(focused, { timeout: 10_000 }).toBe(asked)
  await row.getByRole('link', { name: asked }).waitFor()
  await page.context().close()
})

test('a file that is no trial is refused with its place, and the notebook stays empty', async () => {
  const { page, troubles } = await visit(browser, baseUrl)
  await page.goto(baseUrl)
  await page.getByRole('heading', { level: 1, name: 'Notebook' }).waitFor()
  await page.locator('input[type=file][accept*=json]').setInputFiles({
    name: 'torn.json',
    mimeType: 'application/json',
    buffer: Buffer.from('{\n "a": '),
  })
  const note = page.getByRole('alert')
  await note.waitFor()
  expect(await note.textContent()).toContain('torn.json was not read in')
  expect(await note.textContent()).toContain('Line 2')
  expect(await page.getByRole('list', { name: 'Trials' }).count()).toBe(0)
  expect(troubles).toEqual([])
  await page.context().close()
})

test('what is half typed in the kitchen survives a reload', async () => {
  const { page } = await visit(browser, baseUrl)
  await page.goto(`${baseUrl}#/kitchen`)
  await page.getByRole('button', { name: 'Add a scale' }).click()
  await page.getByLabel('Name').fill('Pocket scale')
  await page.getByLabel('Smallest step it shows').fill('0,0')
  await draftKept(page, '0,0')
  await page.reload()
  await expect.poll(() => page.getByLabel('Name').inputValue()).toBe('Pocket scale')
  expect(await page.getByLabel('Smallest step it shows').inputValue()).toBe('0,0')
  await page.getByLabel('Smallest step it shows').fill('0,01')
  await page.getByLabel('Most it can weigh').fill('200')
  await page.getByRole('button', { name: 'Keep' }).click()
  await page.getByText('Pocket scale shows 0.01 g, up to 200 g').waitFor()
  await page.context().close()
})

test('navigation moves focus to the new heading and names the window after it', async () => {
  const { page } = await visit(browser, baseUrl)
  await page.goto(baseUrl)
  await page.getByRole('link', { name: 'Kitchen' }).click()
  await page.getByRole('heading', { level: 1, name: 'Kitchen' }).waitFor()
  await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe('Kitchen')
  expect(await page.title()).toBe('Kitchen · Evenhand')
  await page.goBack()
  await page.getByRole('heading', { level: 1, name: 'Notebook' }).waitFor()
  await page.context().close()
})

test('focus stays near what was pressed when that goes, in the kitchen and on the plan', async () => {
  const { page, troubles } = await visit(browser, baseUrl)
  const press = async (name: string | RegExp) => {
    const button = page.getByRole('button', { name, exact: typeof name === 'string' }).first()
    await button.focus()
    await page.keyboard.press('Enter')
  }
  const focused = () => page.evaluate(() => document.activeElement?.textContent)
  await page.goto(`${baseUrl}#/kitchen`)
  await press('Add a tap')
  await press('Leave it')
  await expect.poll(focused, { timeout: 10_000 }).toBe('Warmth')
  await page.goto(baseUrl)
  await press('New trial')
  await expect.poll(focused, { timeout: 10_000 }).toBe('New trial')
  await press('Skip: a plain loaf to change')
  await expect.poll(focused, { timeout: 10_000 }).toBe('Plan')
  await openPlanParts(page)
  await press(/^Remove level/)
  await expect.poll(focused, { timeout: 10_000 }).toBe('Levels')
  await press('Undo')
  await expect.poll(focused, { timeout: 10_000 }).toBe('Plan')
  expect(troubles).toEqual([])
  await page.context().close()
})

test('a sample opens once: while its trial stands in the book, it is opened from there', async () => {
  const { page } = await visit(browser, baseUrl)
  await page.goto(baseUrl)
  const sample = page.getByRole('button', { name: /^Open the sample: .*flatbread/ })
  await sample.click()
  await page.waitForURL(/#\/trial\/.*bench$/)
  const first = page.url()
  await page.goto(baseUrl)
  const row = page.getByRole('list', { name: 'Trials' }).locator('> li')
  await row.getByRole('button', { name: /^More: / }).waitFor()
  await page.getByRole('button', { name: /^Open the sample: .*focaccia/ }).waitFor()
  expect(await sample.count()).toBe(0)
  await row.click()
  await page.waitForURL(first)
  // Put away it is opened as the same trial still.
  await page.goto(baseUrl)
  await row.getByRole('button', { name: /^More: / }).click()
  await row.getByRole('button', { name: /^Put away: / }).click()
  await sample.click()
  await page.waitForURL(first)
  await page.context().close()
})
