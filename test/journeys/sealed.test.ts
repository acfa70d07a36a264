import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { fromMenu } from './from-menu.ts'
import { readIn } from './read-in.ts'
import {
  expectClosed,
  expectCovered,
  expectNoLetter,
  expectNothingTold,
  handOn,
  heading,
  pdfText,
  sealOne,
  shownText,
  takeDevice,
  whole,
} from './sealed-trial.ts'
import { accessibilityFaults, openBrowser, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

test('while a tasting is sealed nothing gives a level, letter or weight away: no place, title, history entry, print or file name', async () => {
  const { page, troubles } = await visit(browser, baseUrl)
  await readIn(page, baseUrl, whole)
  await sealOne(page)
  await expectCovered(page, 'at the table')
  await handOn(page)
  await expectCovered(page, 'tasting')
  const fresh = await page.context().newPage()
  await expectClosed(fresh)
  await takeDevice(page, 'Take it, all stays covered')
  await heading(page, 'Notebook').waitFor()
  for (const title of ['Plan', 'Bench', 'Findings', 'Report']) {
    await fresh.goto(`${baseUrl}#/trial/${whole.trial.id}/${title.toLowerCase()}`)
    await heading(fresh, title).waitFor()
    await fresh.getByText('no scores are shown').waitFor()
    // One cover stands in place of each; asked where it holds most.
    if (title === 'Findings') expect(await accessibilityFaults(fresh), title).toEqual([])
    await expectCovered(fresh, title)
  }
  for (const [address, name] of [
    ['#/', 'Notebook'],
    ['#/kitchen', 'Kitchen'],
    ['#/about', 'About Evenhand'],
  ] as const) {
    await fresh.goto(`${baseUrl}${address}`)
    await heading(fresh, name).waitFor()
    if (name === 'Notebook') await fresh.getByText('levels under cover').waitFor()
    await expectCovered(fresh, name)
  }
  const console = await fresh.context().newCDPSession(fresh)
  const { entries } = await console.send('Page.getNavigationHistory')
  expect(entries.length).toBeGreaterThan(6)
  for (const entry of entries) expectNothingTold(`${entry.url} ${entry.title}`, 'history')

  await fresh.goto(baseUrl)
  await fresh.getByRole('button', { name: /^More: / }).click()
  await fresh.getByRole('button', { name: /^Export/ }).click()
  await fresh.getByText('the file holds everything: levels').waitFor()
  const [download] = await Promise.all([
    fresh.waitForEvent('download'),
    fresh.getByRole('button', { name: 'Export it' }).click(),
  ])
  expectNothingTold(download.suggestedFilename(), 'file name')
  expect(download.suggestedFilename()).not.toMatch(/66|71/)
  await fromMenu(fresh, 'Back up all')
  const told = fresh.getByText('1 trial is sealed, but the file holds everything: levels')
  await told.waitFor()
  const [backup] = await Promise.all([
    fresh.waitForEvent('download'),
    fresh.getByRole('button', { name: 'Back up', exact: true }).click(),
  ])
  expect(backup.suggestedFilename()).toMatch(/^evenhand-backup-[\d-]+\.zip$/)
  await told.waitFor()
  expect(troubles).toEqual([])
  await page.context().close()
})

test('blank ballots print codes and questions for every taster, on A4 and Letter, and nothing of a level', async () => {
  const { page, troubles } = await visit(browser, baseUrl)
  await readIn(page, baseUrl, whole)
  await page.goto(`${baseUrl}#/trial/${whole.trial.id}/tasting`)
  await page.evaluate(() => {
    window.print = () => undefined
  })
  await page.getByRole('button', { name: 'Print blank ballots' }).click()
  await page.emulateMedia({ media: 'print' })
  await page.getByRole('heading', { level: 2, name: '905' }).first().waitFor()
  const words = await shownText(page)
  for (const code of ['472', '905']) expect(words).toContain(code)
  expect(words).toContain('Liking')
  expect(words).not.toContain('Who is tasting?')
  expectNothingTold(words, 'ballots')
  expectNoLetter(words, 'ballots')
  for (const format of ['A4', 'Letter']) {
    const printed = pdfText(await page.pdf({ format }))
    if (printed !== null) expectNothingTold(printed, format)
  }
  expect(troubles).toEqual([])
  await page.context().close()
})
