import { readFileSync } from 'node:fs'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'
import { readIn } from './read-in.ts'
import { pdfText } from './sealed-trial.ts'
import { openBrowser, overhangPixels, pagesOf, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
let browser: Browser
beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

const read = readTrialFile(readFileSync('trials/focaccia-hydration.json', 'utf8'))
if (!read.ok) throw new Error('the focaccia sample cannot be read')
const focaccia = read.whole

test.each([
  ['a desk', 1280, 900, 2],
  ['a phone', 390, 844, 4],
] as const)(
  'on %s the plan of the focaccia is at most so many screens',
  async (_, width, height, screens) => {
    const { page, troubles } = await visit(browser, baseUrl, { viewport: { width, height } })
    await readIn(page, baseUrl, focaccia)
    await page.getByRole('button', { name: /^Begin session/ }).waitFor()
    await page.getByRole('progressbar').first().waitFor({ state: 'detached' })
    const tall = await page.evaluate(() => document.documentElement.scrollHeight)
    expect(tall / height).toBeLessThanOrEqual(screens)
    expect(await overhangPixels(page)).toBe(0)
    expect(troubles).toEqual([])
    await page.context().close()
  },
)

test('weigh sheet and tub labels of five doughs print on one page of A4 or Letter each, whatever the page does meanwhile', async () => {
  const { page, troubles } = await visit(browser, baseUrl, {
    viewport: { width: 1280, height: 900 },
  })
  await readIn(page, baseUrl, focaccia)
  await page.evaluate(() => {
    window.print = () => undefined
  })
  for (const format of ['A4', 'Letter'])
    for (const [press, words] of [
      ['Print the weigh sheet', ['Session 3, 2 October 2026', 'Soft wheat flour', 'Bag and lot']],
      ['Print tub labels', ['Session 3', 'Rise in the tub']],
    ] as const) {
      await page.getByRole('button', { name: press, exact: true }).click()
      await page.locator('body[data-prints-paper]').waitFor()
      const pdf = await page.pdf({ format })
      expect(pagesOf(pdf), `${press} on ${format}`).toBe(1)
      const text = pdfText(pdf)
      // Without a reader of PDFs on this machine the number of pages alone is held.
      if (text !== null)
        for (const each of words) expect(text, `${press} on ${format}`).toContain(each)
      await page.evaluate(() => window.dispatchEvent(new Event('afterprint')))
      await page.locator('body:not([data-prints-paper])').waitFor()
    }
  expect(troubles).toEqual([])
  await page.context().close()
})

test('the run sheet of five doughs prints on two pages of A4 or Letter, each of its moments in one line', async () => {
  const { page, troubles } = await visit(browser, baseUrl, {
    viewport: { width: 1280, height: 900 },
  })
  await readIn(page, baseUrl, focaccia)
  await page.evaluate(() => {
    window.print = () => undefined
  })
  await page.goto(`${baseUrl}#/trial/${focaccia.trial.id}/plan/clock`)
  for (const [format, millimetres] of [
    ['A4', 210],
    ['Letter', 215.9],
  ] as const) {
    await page.getByRole('button', { name: 'Print the run sheet', exact: true }).click()
    await page.locator('body[data-prints-paper]').waitFor()
    // The window as wide as the paper between its margins of 14 mm, 96 px an inch.
    const width = Math.floor(((millimetres - 28) / 25.4) * 96)
    await page.setViewportSize({ width, height: 900 })
    await page.emulateMedia({ media: 'print' })
    const lines = await page
      .locator('tbody th[scope="row"] > span:last-child')
      .evaluateAll((all) => all.map((each) => each.getClientRects().length))
    expect(lines.length).toBeGreaterThan(40)
    expect(lines.filter((count) => count !== 1)).toEqual([])
    await page.emulateMedia({ media: null })
    expect(pagesOf(await page.pdf({ format })), format).toBe(2)
    await page.setViewportSize({ width: 1280, height: 900 })
    await page.evaluate(() => window.dispatchEvent(new Event('afterprint')))
    await page.locator('body:not([data-prints-paper])').waitFor()
  }
  expect(troubles).toEqual([])
  await page.context().close()
})

test('the first level is at most the eighth stop of the keyboard', async () => {
  const { page } = await visit(browser, baseUrl, { viewport: { width: 1280, height: 900 } })
  await readIn(page, baseUrl, focaccia)
  const rail = page.getByRole('navigation', { name: /^Levels/ })
  await rail.getByRole('button').first().waitFor()
  await page.evaluate(() => {
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur()
    document.body.tabIndex = -1
    document.body.focus()
  })
  const on = () => rail.evaluate((part) => part.contains(document.activeElement))
  let stops = 0
  while (!(await on()) && stops < 12) {
    await page.keyboard.press('Tab')
    stops += 1
  }
  expect(stops).toBeLessThanOrEqual(8)
  await page.context().close()
})

test('on a phone a new trial comes to its weigh sheet in six presses, without scrolling past a screen', async () => {
  const { page, troubles } = await visit(browser, baseUrl, {
    viewport: { width: 390, height: 844 },
    hasTouch: true,
  })
  await page.goto(baseUrl)
  let presses = 0
  const press = async (name: string | RegExp) => {
    const wanted = page.getByRole('button', { name }).first()
    await wanted.waitFor()
    const box = await wanted.boundingBox()
    expect((box?.y ?? 9999) + (await page.evaluate(() => window.scrollY))).toBeLessThan(844)
    await wanted.click()
    presses += 1
  }
  for (const name of [/^New trial$/, /^Focaccia/, /^Water/, /^Two Fridays/, /^Take this plan$/])
    await press(name)
  await page.waitForURL(/plan$/)
  await press(/^Weigh sheet$/)
  await page.getByRole('table', { name: 'Grams for each batch' }).waitFor()
  expect(presses).toBeLessThanOrEqual(6)
  expect(troubles).toEqual([])
  await page.context().close()
})
