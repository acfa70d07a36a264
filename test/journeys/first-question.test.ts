import type { Browser, Locator, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { openBrowser, overhangPixels, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
let browser: Browser
beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true })

/** A notebook with a trial and a house formula in it, so that every way into a new trial is offered. */
async function notebookInUse(page: Page): Promise<void> {
  await page.goto(baseUrl)
  await page.getByRole('button', { name: /focaccia/ }).click()
  await page.waitForURL(/#\/trial\/[\w-]+\/\w+$/)
  await page.goto(page.url().replace(/\w+$/, 'findings'))
  await press(page, 'Adopt 74 %').click()
  await press(page, 'Keep it').click()
  await page.waitForURL(/#\/house\//)
}

/** What does not stand whole on the screen as the page was opened. */
async function outOfReach(pressed: Locator): Promise<string[]> {
  await pressed.first().waitFor()
  return pressed.evaluateAll((all) =>
    all.flatMap((each) => {
      const { top, bottom, left, right } = each.getBoundingClientRect()
      const whole = top >= 0 && bottom <= innerHeight && left >= 0 && right <= innerWidth
      return whole && scrollY === 0 ? [] : [`${each.textContent.trim()} ends at ${bottom}`]
    }),
  )
}

test.each([
  [390, 844],
  [360, 640],
])(
  'at %i × %i the questions of a new trial, all that can be begun from, and the way on stand on one screen each',
  async (width, height) => {
    const { page, troubles } = await visit(browser, baseUrl, {
      ...{ viewport: { width, height }, hasTouch: true, isMobile: true },
    })
    await notebookInUse(page)
    await page.goto(`${baseUrl}#/new`)
    const all = page.getByRole('main').getByRole('button')
    for (const name of ['Another usual bread', 'From a house formula', 'From an earlier trial'])
      await press(page, name).waitFor()
    await expect.poll(() => outOfReach(all)).toEqual([])
    expect(await all.count()).toBe(9)
    expect(await overhangPixels(page)).toBe(0)

    const shelf = page.getByRole('dialog')
    for (const [name, presses] of [
      ['Another usual bread', 7],
      ['From a house formula', 2],
      ['From an earlier trial', 2],
      ['Paste a formula', 2],
    ] as const) {
      await press(page, name).click()
      const inside = shelf.getByRole('button')
      await expect.poll(() => inside.count(), { message: name }).toBe(presses)
      expect(await outOfReach(inside), name).toEqual([])
      await inside.filter({ hasText: /^(Close|Leave it)$/ }).click()
      await shelf.waitFor({ state: 'detached' })
    }

    await press(page, 'Another usual bread').click()
    await shelf.getByRole('button', { name: /^Rye tin loaf/ }).click()
    for (const answer of [/^Water/, /^Two Fridays/]) {
      await press(page, 'Back').waitFor()
      await expect.poll(() => outOfReach(all), { message: String(answer) }).toEqual([])
      await page.getByRole('button', { name: answer }).click()
    }
    expect(await outOfReach(press(page, 'Take this plan'))).toEqual([])
    expect(troubles).toEqual([])
    await page.context().close()
  },
)
