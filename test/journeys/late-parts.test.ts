import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { readIn } from './read-in.ts'
import { tastingTrial } from './tasting-trial.ts'
import { openBrowser, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

/** Files that parts of the notebook’s page come in when they are first needed, and what each part is called where it fails. */
const ofPage = [
  [/\/header-ways-[^/]+\.js$/, 'the ways at the head of the page'],
  [/\/file-desk-[^/]+\.js$/, 'files and backups'],
  [/\/rail-picture-[^/]+\.js$/, 'the pictures of the levels'],
  [/\/book-answers-[^/]+\.js$/, 'the answers of the book'],
  [/\/chain-shelf-[^/]+\.css$/, 'the lines of questions'],
  [/\/house-shelf-[^/]+\.js$/, 'the house formulas'],
  [/\/backup-reminder-[^/]+\.js$/, 'what is in no backup yet'],
] as const

/** A fault of the network: these files do not come, until the answer is called. */
async function withhold(page: Page, files: readonly RegExp[]): Promise<() => Promise<void>> {
  const lost = (url: URL) => files.some((file) => file.test(url.pathname))
  await page.route(lost, (route) => route.abort())
  return () => page.unroute(lost)
}

const failed = (page: Page, what: string) =>
  page.getByRole('alert').filter({ hasText: `Something went wrong in ${what}.` })

/** Tries one failed part again, and sees that nothing is said of it any more. */
async function tryAgain(page: Page, what: string): Promise<void> {
  await failed(page, what).getByRole('button', { name: 'Try again', exact: true }).click()
  await failed(page, what).waitFor({ state: 'detached' })
}

test('parts of the notebook whose program could not be fetched say so, each by its name, and come at the next try', async () => {
  const { page } = await visit(browser, baseUrl)
  await readIn(page, baseUrl, tastingTrial())
  // Another document: it holds no part that was fetched before.
  await page.goto('about:blank')
  const mend = await withhold(
    page,
    ofPage.map(([file]) => file),
  )
  await page.goto(baseUrl)
  for (const [, what] of ofPage) await failed(page, what).waitFor()
  // What did come stands and can be used meanwhile.
  await page.getByRole('list', { name: 'Trials' }).getByRole('link').waitFor()
  await page.getByRole('button', { name: 'New trial' }).waitFor()
  await mend()
  for (const [, what] of ofPage) await tryAgain(page, what)
  await page.getByRole('link', { name: 'Kitchen', exact: true }).waitFor()
  await page.getByRole('list', { name: 'Trials' }).getByText('74.3').first().waitFor()
  await page.locator('input[type=file][accept*=json]').waitFor({ state: 'attached' })
  // A sheet that never came would leave its part without its looks.
  const bare = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLLinkElement>('link[rel=stylesheet]')].flatMap(
      ({ href, sheet }) => {
        try {
          return sheet && sheet.cssRules.length > 0 ? [] : [href]
        } catch {
          return [href]
        }
      },
    ),
  )
  expect(bare).toEqual([])
  await page.context().close()
})

test('the menu is asked for anew by the press that opens it, and what can be begun from by its Try again', async () => {
  const { page } = await visit(browser, baseUrl)
  await readIn(page, baseUrl, tastingTrial())
  await page.goto('about:blank')
  const mend = await withhold(page, [/\/menu-list-[^/]+\.js$/, /\/bake-shelf-[^/]+\.js$/])
  await page.goto(baseUrl)
  const menu = page.getByRole('button', { name: 'Menu', exact: true })
  await menu.click()
  await failed(page, 'the menu').waitFor()
  await menu.click()
  await failed(page, 'the menu').waitFor({ state: 'detached' })
  await page.getByRole('button', { name: 'New trial' }).click()
  const shelf = page.getByRole('button', { name: 'Another usual bread', exact: true })
  await shelf.click()
  await failed(page, 'what can be begun from').waitFor()
  await mend()
  await menu.click()
  await page.getByRole('link', { name: 'About', exact: true }).waitFor()
  await page.keyboard.press('Escape')
  await tryAgain(page, 'what can be begun from')
  await page.getByRole('dialog').waitFor()
  await page.context().close()
})
