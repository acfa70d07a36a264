import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { fromMenu } from './from-menu.ts'
import { newTrial as beginTrial, openPlanParts } from './new-trial.ts'
import { openBrowser, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

async function newTrial(page: Page): Promise<void> {
  await page.goto(baseUrl)
  await beginTrial(page)
  await page.waitForURL(/#\/trial\/[\w-]+\/plan$/)
  await page.locator('[data-kept=kept]').waitFor()
}

const question = (page: Page) => page.getByLabel('Question', { exact: true })

/** From now on the page's database has no room for a plan or a draft. */
const fill = (page: Page) =>
  page.evaluate(() => {
    const real = IDBObjectStore.prototype.put
    Object.assign(window, {
      makeRoom: () => Object.assign(IDBObjectStore.prototype, { put: real }),
    })
    IDBObjectStore.prototype.put = function full(this: IDBObjectStore, ...given) {
      if (this.name === 'plans' || this.name === 'drafts')
        throw new DOMException('full', 'QuotaExceededError')
      return real.apply(this, given)
    }
  })

test('two windows that edit one plan 100 ms apart both keep their field', async () => {
  const { page, troubles } = await visit(browser, baseUrl)
  await newTrial(page)
  const other = await page.context().newPage()
  await other.goto(page.url())
  await openPlanParts(other)
  await question(other).waitFor()
  const sessions = other.getByLabel('Sessions planned')
  await sessions.waitFor()
  await question(page).fill('How soft should it be?')
  await page.waitForTimeout(100)
  await sessions.fill('5')
  await page.locator('[data-kept=kept]').waitFor()
  await other.locator('[data-kept=kept]').waitFor()
  await page.reload()
  await openPlanParts(page)
  await expect.poll(() => question(page).inputValue()).toBe('How soft should it be?')
  await expect.poll(() => page.getByLabel('Sessions planned').inputValue()).toBe('5')
  await expect.poll(() => question(other).inputValue()).toBe('How soft should it be?')
  expect(troubles).toEqual([])
  await page.context().close()
})

test('typing and leaving at once on a full disk: what was not kept goes along, and is kept once there is room', async () => {
  const { page } = await visit(browser, baseUrl)
  await newTrial(page)
  await fill(page)
  await question(page).fill('Typed on a full disk?')
  await page.getByRole('link', { name: 'Notebook' }).click()
  const note = page.getByRole('alert')
  await note.getByText(/could not be kept. This device has no room left/).waitFor()
  await page.getByRole('link', { name: 'Kitchen' }).click()
  await page.getByRole('heading', { level: 1, name: 'Kitchen' }).waitFor()
  await note.getByText(/Typed on a full disk/).waitFor()
  await page.evaluate('makeRoom()')
  await note.getByRole('button', { name: 'Try again' }).click()
  await note.waitFor({ state: 'detached' })
  await page.getByRole('link', { name: 'Evenhand, to the Notebook' }).click()
  await page.getByRole('link', { name: 'Typed on a full disk?' }).waitFor()
  await page.context().close()
})

test('site data cleared under an open page: it says so at once, and offers to reload', async () => {
  const { page } = await visit(browser, baseUrl)
  await newTrial(page)
  const devtools = await page.context().newCDPSession(page)
  await devtools.send('Storage.clearDataForOrigin', {
    ...{ origin: new URL(baseUrl).origin, storageTypes: 'indexeddb' },
  })
  const note = page.getByRole('alert')
  await note.getByText('This site’s data were cleared.').waitFor()
  await note.getByRole('button', { name: 'Reload' }).click()
  await page.getByText('This trial is not in the notebook').waitFor()
  await page.context().close()
})

test('the first trial of one’s own has the browser asked to keep the notebook, once', async () => {
  const { page } = await visit(browser, baseUrl)
  await newTrial(page)
  await page.getByText('Keeping your notebook').waitFor()
  await page.getByRole('button', { name: 'Close', exact: true }).click()
  await page.goto(baseUrl)
  await beginTrial(page)
  await page.waitForURL(/#\/trial\/[\w-]+\/plan$/)
  expect(await page.getByText('Keeping your notebook').count()).toBe(0)
  await page.context().close()
})

test('after “Erase for good” nothing offers to undo what cannot be undone', async () => {
  const { page } = await visit(browser, baseUrl)
  await newTrial(page)
  await page.goto(baseUrl)
  await page.getByRole('button', { name: /^More: / }).click()
  await page.getByRole('button', { name: /^Throw out: / }).click()
  await page.getByRole('button', { name: 'Undo' }).waitFor()
  await fromMenu(page, 'Thrown out')
  await page.getByRole('heading', { level: 2, name: /How wet/ }).waitFor()
  await page.getByRole('button', { name: /^More: / }).click()
  await page.getByRole('button', { name: /^Erase for good: / }).click()
  await page
    .getByText(/Back up all/)
    .last()
    .waitFor()
  await page.getByRole('button', { name: 'Erase it' }).click()
  await page.getByRole('heading', { level: 2, name: /How wet/ }).waitFor({ state: 'detached' })
  expect(await page.getByRole('button', { name: 'Undo' }).count()).toBe(0)
  await page.context().close()
})
