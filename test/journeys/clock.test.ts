import type { Browser, Locator, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { madeStep } from '../core/made-plan.ts'
import { dayOf } from './made-day.ts'
import { readIn } from './read-in.ts'
import { tastingTrial } from './tasting-trial.ts'
import { openBrowser, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

/** A page whose clock of the day can be moved by a hand, as in a device's settings; the steady clock stays. */
async function withClock(): Promise<{ page: Page; troubles: string[] }> {
  const visited = await visit(browser, baseUrl)
  await visited.page.addInitScript(() => {
    const real = Date.now
    Date.now = () => real() + Number(sessionStorage.getItem('moved') ?? 0)
  })
  await visited.page.goto(baseUrl)
  await visited.page.getByRole('button', { name: /flatbread/ }).click()
  await visited.page.waitForURL(/bench$/)
  await visited.page.getByRole('region', { name: 'Now' }).waitFor()
  return visited
}

const moveMinutes = (page: Page, minutes: number) =>
  page.evaluate((by) => sessionStorage.setItem('moved', String(by * 60_000)), minutes)

test('a clock that is set forward under the open Bench is said, after a reload too, until it is read', async () => {
  const { page, troubles } = await withClock()
  await moveMinutes(page, 58)
  const note = page.getByText('This device’s clock went on by 58 min, or this device slept')
  await note.waitFor()
  await page.getByText(/what was begun before that shows 58 min too much/).waitFor()
  await page.reload()
  await note.waitFor()
  await page.getByRole('button', { name: 'Close', exact: true }).click()
  await note.waitFor({ state: 'detached' })
  await page.reload()
  await page.getByRole('region', { name: 'Now' }).waitFor()
  expect(await note.count()).toBe(0)
  expect(troubles).toEqual([])
  await page.context().close()
})

test('a clock that is set back under the open Bench is said, and no press then tells a time below zero', async () => {
  const { page, troubles } = await withClock()
  const whole = tastingTrial()
  await readIn(page, baseUrl, whole)
  await page.goto(`${baseUrl}#/trial/${whole.trial.id}/bench`)
  await page.getByRole('button', { name: 'Begin', exact: true }).click()
  await page.getByRole('button', { name: /^Undo .*Mix begun/ }).waitFor()
  await moveMinutes(page, -90)
  await page.getByText(/It shows .* but the last entry was made at/).waitFor()
  await page.getByText(/clock was moved back by 1 h 30 min/).waitFor()
  await page.getByRole('button', { name: /windowpane: done/ }).click()
  await page.getByRole('button', { name: /^Undo .*Mix done/ }).waitFor()
  for (const shown of await page.getByRole('timer').allTextContents())
    expect(shown).not.toMatch(/[-−]\d/)
  // Whatever was timed over the moved clock tells no duration: nothing stands in the log as longer or shorter than planned.
  expect(await page.getByText(/(longer|shorter) than planned/).count()).toBe(0)
  expect(troubles).toEqual([])
  await page.context().close()
})

/** Whether each is whole on the screen and under nothing else. */
const inReach = async (...all: Locator[]) => {
  const each = (await Promise.all(all.map((one) => one.all()))).flat()
  const hidden = await Promise.all(
    each.map((one) =>
      one.evaluate((element) => {
        const { left, right, top, bottom } = element.getBoundingClientRect()
        const at = document.elementFromPoint((left + right) / 2, (top + bottom) / 2)
        const isWhole = left >= 0 && top >= 0 && right <= innerWidth && bottom <= innerHeight
        const isSeen = at !== null && (element.contains(at) || at.contains(element))
        return isWhole && isSeen ? '' : `${element.textContent}: ${top} to ${bottom}`
      }),
    ),
  )
  return hidden.filter((said) => said !== '')
}

test('a phone lying on the bench: the clocks, what is to do, the main press and undo stand whole on the screen from the mix to the oven, and no press scrolls', async () => {
  const { page, troubles } = await visit(browser, baseUrl, {
    ...{ viewport: { width: 844, height: 390 }, hasTouch: true, isMobile: true },
  })
  const steps = [
    madeStep('mix', 'mix', { name: 'Mix', handsSeconds: 60 }),
    madeStep('bake', 'bake', {
      ...{ name: 'Bake', handsSeconds: 20, waitSeconds: 240, uses: ['hands', 'oven'] },
    }),
  ]
  const whole = dayOf({ steps, placesPerLoad: 1 }, Date.now() - 60_000)
  await readIn(page, baseUrl, whole)
  await page.goto(`${baseUrl}#/trial/${whole.trial.id}/bench`)
  const now = page.getByRole('region', { name: 'Now' })
  const main = page.getByRole('region', { name: 'Main press' }).getByRole('button')
  const undo = page.getByRole('button', { name: /^Undo/ })
  const needed = () =>
    inReach(
      page.locator('nav[aria-label^="Doughs"] button'),
      now.getByRole('heading'),
      now.getByRole('timer'),
      main,
      undo,
    )
  await now.waitFor()
  await expect.poll(needed).toEqual([])
  const scrolled = await page.evaluate(() => scrollY)
  await page.getByRole('button', { name: 'Weigh', exact: true }).click()
  const back = page.getByRole('button', { name: 'Back', exact: true })
  await expect
    .poll(() => inReach(main, back, page.getByRole('button', { name: /^\d$/ })))
    .toEqual([])
  await back.click()
  const words = () => main.first().innerText()
  const lastUndo = async () => ((await undo.count()) > 0 ? undo.first().innerText() : '')
  for (let press = 0; press < 12 && !(await words()).startsWith('Pull'); press += 1) {
    const before = await lastUndo()
    await main.first().click()
    await expect.poll(lastUndo).not.toBe(before)
    await expect.poll(needed).toEqual([])
  }
  expect(await words()).toMatch(/^Pull/)
  expect(await page.evaluate(() => scrollY)).toBe(scrolled)
  expect(troubles).toEqual([])
  await page.context().close()
})
