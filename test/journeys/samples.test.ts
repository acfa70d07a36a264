import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { accessibilityFaults, openBrowser, overhangPixels, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

const looks = [360, 1280].flatMap((width) =>
  (['light', 'dark'] as const).map((colorScheme) => ({ width, colorScheme })),
)
const places = ['Plan', 'Bench', 'Tasting', 'Findings', 'Report']
/** A sample for each look: every place is seen in all four, and every sample in one at least. */
const visits = looks.map((look, turn) => ({
  ...look,
  sample: [/flatbread/, /salt/, /flatbread/, /focaccia/][turn] ?? /focaccia/,
}))

for (const { width, colorScheme, sample } of visits)
  test(`every place of the sample ${sample.source} at ${width} px, ${colorScheme}: it fits, has no fault axe knows, and calls nobody`, async () => {
    const { page, troubles } = await visit(browser, baseUrl, {
      // Tall, so that what merely lies under the bench's foot until it is scrolled clear is not taken for covered.
      viewport: { width, height: 3200 },
      colorScheme,
    })
    await page.goto(baseUrl)
    await page.getByRole('button', { name: sample }).click()
    await page.waitForURL(/#\/trial\//)
    const address = page.url().replace(/\/\w+$/, '')
    for (const place of places) {
      await page.goto(`${address}/${place.toLowerCase()}`)
      await page.getByRole('heading', { level: 1, name: place }).waitFor()
      await page.getByRole('progressbar').waitFor({ state: 'detached' })
      expect(await accessibilityFaults(page), place).toEqual([])
      expect(await overhangPixels(page), place).toBe(0)
    }
    expect(troubles).toEqual([])
    await page.context().close()
  })
