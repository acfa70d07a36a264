import { readFileSync } from 'node:fs'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { sampleTrial } from '../core/findings/sample-trial.ts'
import { fromMenu } from './from-menu.ts'
import { readIn } from './read-in.ts'
import { faultsInBothLooks, openBrowser, overhangPixels, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

const focaccia = sampleTrial('focaccia-hydration')

async function settled(page: Page, place: 'findings' | 'report') {
  await page.goto(`${baseUrl}#/trial/${focaccia.trial.id}/${place}`)
  await page
    .getByText(/^Liking is best in between/)
    .first()
    .waitFor()
  if (place === 'findings')
    await page
      .getByRole('img', { name: /^74 %: mean/ })
      .first()
      .waitFor()
}

test('at 1280 px the chart is as wide as the rail, its means under their tabs, how far it carries below, and its level is adopted in two presses', async () => {
  const { page } = await visit(browser, baseUrl, { viewport: { width: 1280, height: 900 } })
  await readIn(page, baseUrl, focaccia)
  await settled(page, 'findings')
  const middle = async (locator: ReturnType<Page['locator']>) => {
    const box = await locator.first().boundingBox()
    if (!box) throw new Error('it is not on the page')
    return { x: box.x + box.width / 2, y: box.y }
  }
  const ladder = await middle(page.getByRole('list', { name: 'How far this carries' }))
  for (const level of [66, 82]) {
    const mean = await middle(page.getByRole('img', { name: new RegExp(`^${level} %: mean`) }))
    const tab = await middle(
      page
        .getByRole('navigation', { name: /^Levels/ })
        .getByRole('button', { name: new RegExp(`${level}`) }),
    )
    expect(Math.abs(mean.x - tab.x)).toBeLessThan(2)
    expect(ladder.y).toBeGreaterThan(mean.y)
  }
  let presses = 0
  for (const name of ['Adopt 74 %', 'Keep it']) {
    await page.getByRole('button', { name, exact: true }).first().click()
    presses += 1
  }
  await page.getByRole('heading', { level: 1, name: 'House dough, 74 %', exact: true }).waitFor()
  expect(presses).toBeLessThanOrEqual(2)
  await page.context().close()
})

test('after a look at Plan a press draws Findings with the answer that was worked out meanwhile, and no word of waiting', async () => {
  const { page, troubles } = await visit(browser, baseUrl)
  await readIn(page, baseUrl, focaccia)
  const ahead = page.waitForEvent('worker', (worker) => worker.url().includes('findings-worker'))
  await page.goto(`${baseUrl}#/trial/${focaccia.trial.id}/plan`)
  await (await ahead).waitForEvent('close')
  const seen = await page.evaluate(async () => {
    const way = [...document.querySelectorAll('a')].find(({ href }) => href.endsWith('/findings'))
    way?.click()
    const frames: string[] = []
    while (frames.length < 300 && !frames.at(-1)?.includes('Liking is best in between')) {
      await new Promise((next) => requestAnimationFrame(next))
      frames.push(document.querySelector('main')?.textContent ?? '')
    }
    return frames
  })
  expect(seen.at(-1)).toMatch(/Liking is best in between/)
  for (const frame of seen) expect(frame).not.toMatch(/Working out|Opening/)
  expect(page.workers().filter((worker) => worker.url().includes('findings-worker'))).toEqual([])
  expect(troubles).toEqual([])
  await page.context().close()
})

test('the answer stands beside the trial in the notebook once it was found', async () => {
  const { page } = await visit(browser, baseUrl)
  await readIn(page, baseUrl, focaccia)
  await page.goto(baseUrl)
  const line = page.getByRole('list', { name: 'Trials' })
  await line.getByText('Finished').waitFor()
  expect(await line.getByText(/^Liking is best in between/).count()).toBe(0)
  await settled(page, 'findings')
  await page.getByRole('link', { name: 'Notebook' }).click()
  await line.getByText(/^Liking is best in between/).waitFor()
  await page.context().close()
})

test('scores kept elsewhere: asked about once, read by the answer, and found in', async () => {
  const { page, troubles } = await visit(browser, baseUrl, {
    viewport: { width: 360, height: 800 },
  })
  await page.goto(baseUrl)
  await fromMenu(page, 'Import scores')
  await page.getByRole('heading', { level: 1, name: 'Scores from elsewhere' }).waitFor()
  await page.locator('input[type=file]').setInputFiles({
    name: 'tasting.csv',
    mimeType: 'text/csv',
    buffer: readFileSync('test/journeys/tasting-elsewhere.csv'),
  })
  const asked = page.getByText('Row 5, column “who”: 6 rows have')
  await asked.waitFor()
  expect(await faultsInBothLooks(page)).toEqual([])
  await page.getByRole('button', { name: '“who” is the taster' }).click()
  await page.getByRole('button', { name: 'Show what it supports' }).click()
  await page.getByRole('list', { name: 'How far this carries' }).waitFor()
  await page
    .getByRole('img', { name: /^64: mean/ })
    .first()
    .waitFor()
  expect(await faultsInBothLooks(page)).toEqual([])
  expect(await overhangPixels(page)).toBe(0)
  expect(troubles).toEqual([])
  await page.context().close()
})

/** The colours that a chart's dots and feet are drawn in: what fills them, and the edges of the dots. */
function coloursOf(page: Page) {
  return page.evaluate(() => {
    const of = (what: string, part: 'fill' | 'stroke' | 'backgroundColor') =>
      [
        ...new Set([...document.querySelectorAll(what)].map((one) => getComputedStyle(one)[part])),
      ].toSorted((one, other) => one.localeCompare(other))
    return {
      dots: of('circle[class*="point"]', 'fill'),
      edges: of('circle[class*="point"]', 'stroke'),
      feet: of('[class*="labels"] [class*="foot"]', 'backgroundColor'),
    }
  })
}

test('on paper a chart is black alone: its dots and feet are open, and a lit level hides none', async () => {
  const { page } = await visit(browser, baseUrl, { viewport: { width: 1280, height: 900 } })
  await readIn(page, baseUrl, focaccia)
  await settled(page, 'findings')
  await page.locator('circle[class*="point"]').nth(20).waitFor()
  const screen = await coloursOf(page)
  expect(screen.dots).toHaveLength(5)
  expect(screen.feet).toEqual(screen.dots)
  const onPaper = { dots: ['rgb(255, 255, 255)'], edges: ['rgb(0, 0, 0)'] }
  const levels = page.getByRole('navigation', { name: /^Levels/ }).getByRole('button')
  for (const lights of [false, true]) {
    if (lights) await levels.first().click()
    await page.emulateMedia({ media: 'print' })
    expect(await coloursOf(page)).toEqual({ ...onPaper, feet: ['rgba(0, 0, 0, 0)'] })
    await page.emulateMedia({ media: null })
  }
  await page.context().close()
})
