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
const samples = [/flatbread/, /focaccia/, /salt/]

for (const { width, colorScheme } of looks)
  test(`every place of every sample at ${width} px, ${colorScheme}: it fits, has no fault axe knows, and calls nobody`, async () => {
    const { page, troubles } = await visit(browser, baseUrl, {
      // Tall, so that what merely lies under the bench's foot until it is scrolled clear is not taken for covered.
      viewport: { width, height: 3200 },
      colorScheme,
    })
    for (const sample of samples) {
      await page.goto(baseUrl)
      await page.getByRole('button', { name: sample }).click()
      await page.waitForURL(/#\/trial\//)
      const address = page.url().replace(/\/\w+$/, '')
      for (const place of places) {
        const where = `${place} of ${sample}`
        await page.goto(`${address}/${place.toLowerCase()}`)
        await page.getByRole('heading', { level: 1, name: place }).waitFor()
        await page.getByRole('progressbar').waitFor({ state: 'detached' })
        expect(await accessibilityFaults(page), where).toEqual([])
        expect(await overhangPixels(page), where).toBe(0)
      }
    }
    expect(troubles).toEqual([])
    await page.context().close()
  })
