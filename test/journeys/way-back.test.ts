import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { sampleTrial } from '../core/findings/sample-trial.ts'
import { readIn } from './read-in.ts'
import { openBrowser, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
let browser: Browser
beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

const focaccia = sampleTrial('focaccia-hydration')
const trial = `${baseUrl}#/trial/${focaccia.trial.id}`

/** To the kitchen by the one menu, as from anywhere. */
async function toKitchen(page: Page): Promise<void> {
  const menu = page.getByRole('navigation', { name: 'Menu' })
  await menu.getByRole('button', { name: 'Menu' }).click()
  await menu.getByRole('link', { name: 'Kitchen', exact: true }).click()
  await page.getByRole('heading', { level: 1, name: 'Kitchen', exact: true }).waitFor()
}

const ways = (page: Page) => page.getByRole('main').getByRole('link', { name: /^Back to / })

test.each([
  ['a desk', 1280, 900, ['plan', 'findings', 'bench']],
  ['a phone', 360, 640, ['plan']],
] as const)(
  'on %s the kitchen leads back to the place of the trial one came from, over a reload, and to the notebook where one came from it',
  async (_, width, height, places) => {
    const { page, troubles } = await visit(browser, baseUrl, { viewport: { width, height } })
    await readIn(page, baseUrl, focaccia)
    for (const place of places) {
      await page.goto(`${trial}/${place}`)
      const there = page.locator('h1', { hasText: new RegExp(`^${place}`, 'i') })
      await there.waitFor({ state: 'attached' })
      await toKitchen(page)
      const back = ways(page).filter({ hasText: `Back to the ${place} of “` })
      await back.waitFor()
      await page.reload()
      await back.waitFor()
      expect(await ways(page).count()).toBe(1)
      await back.click()
      await page.waitForURL(`${trial}/${place}`)
      await there.waitFor({ state: 'attached' })
    }

    await page.goto(baseUrl)
    await page.getByRole('heading', { level: 1, name: 'Notebook' }).waitFor()
    for (const open of [() => toKitchen(page), () => page.reload()]) {
      await open()
      await ways(page).waitFor()
      expect(await ways(page).allInnerTexts()).toEqual(['Back to the notebook'])
    }
    await ways(page).click()
    await page.getByRole('heading', { level: 1, name: 'Notebook' }).waitFor()

    // A trial that is gone since leads nowhere; the notebook is there.
    await page.goto(`${baseUrl}#/kitchen/gone/plan`)
    await ways(page).waitFor()
    expect(await ways(page).allInnerTexts()).toEqual(['Back to the notebook'])
    expect(troubles).toEqual([])
    await page.context().close()
  },
)
