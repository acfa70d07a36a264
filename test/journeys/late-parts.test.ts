import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { sampleTrial } from '../core/findings/sample-trial.ts'
import { fromMenu } from './from-menu.ts'
import { readIn } from './read-in.ts'
import { handOn, heading, whole as sealedTrial, sealOne, takeDevice } from './sealed-trial.ts'
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

test('charts that could not be fetched leave the answer standing, and come at the next try', async () => {
  const { page } = await visit(browser, baseUrl)
  const focaccia = sampleTrial('focaccia-hydration')
  await readIn(page, baseUrl, focaccia)
  await page.goto('about:blank')
  const mend = await withhold(page, [/\/response-chart-[^/]+\.js$/])
  await page.goto(`${baseUrl}#/trial/${focaccia.trial.id}/findings`)
  await failed(page, 'this picture').waitFor()
  await page.getByRole('button', { name: 'Adopt 74 %', exact: true }).waitFor()
  await page.getByRole('list', { name: 'How far this carries' }).waitFor()
  await mend()
  await tryAgain(page, 'this picture')
  await page.locator('figure svg').first().waitFor()
  await page.context().close()
})

test('the questions before an export and before erasing, where they could not be fetched, are asked by the next press', async () => {
  const { page } = await visit(browser, baseUrl)
  await readIn(page, baseUrl, sealedTrial)
  await sealOne(page)
  await handOn(page)
  await takeDevice(page, 'Take it, all stays covered')
  await heading(page, 'Notebook').waitFor()
  await page.goto('about:blank')
  const mend = await withhold(page, [/\/export-dialog-[^/]+\.js$/, /\/erase-dialog-[^/]+\.js$/])
  await page.goto(baseUrl)
  await page.getByRole('button', { name: /^More: / }).click()
  const saved: unknown[] = []
  page.on('download', (download) => saved.push(download))
  await page.getByRole('button', { name: /^Export: / }).click()
  await failed(page, 'the question before an export').waitFor()
  await page.getByRole('button', { name: /^Throw out: / }).click()
  await fromMenu(page, 'Thrown out')
  await page.getByRole('button', { name: /^More: / }).click()
  const erase = page.getByRole('button', { name: /^Erase for good: / })
  await erase.click()
  await failed(page, 'the question before erasing').waitFor()
  // Nothing was given out and nothing erased while no question could be asked.
  expect(saved).toEqual([])
  await mend()
  await erase.click()
  await page.getByRole('button', { name: 'Erase it' }).waitFor()
  await page.context().close()
})

test('the photo entry that could not be fetched comes at the next try', async () => {
  const { page } = await visit(browser, baseUrl)
  await page.goto(`${baseUrl}#/`)
  await page
    .getByRole('button', { name: /flatbread/ })
    .first()
    .click()
  await page.getByRole('button', { name: 'More to log' }).waitFor()
  const mend = await withhold(page, [/\/photo-entry-[^/]+\.js$/])
  await page.getByRole('button', { name: 'More to log' }).click()
  await page.getByRole('button', { name: 'Photo', exact: true }).click()
  await failed(page, 'this entry').waitFor()
  await mend()
  await tryAgain(page, 'this entry')
  await page.getByLabel('Caption').waitFor()
  await page.context().close()
})
