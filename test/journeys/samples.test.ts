import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { faultsInBothLooks, openBrowser, overhangPixels, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

const places = ['Plan', 'Bench', 'Tasting', 'Findings', 'Report']
/** Every place is seen in both looks at both widths; the finished salt trial where it answers differently. */
const visits = [
  { sample: /flatbread/, width: 360, seen: places },
  { sample: /focaccia/, width: 1280, seen: places },
  { sample: /salt/, width: 1280, seen: ['Findings', 'Report'] },
]

for (const { sample, width, seen } of visits)
  test(`the sample ${sample.source} at ${width} px, light and dark: ${seen.join(', ')} fit, have no fault axe knows, and call nobody`, async () => {
    const { page, troubles } = await visit(browser, baseUrl, {
      // Tall, so that what merely lies under the bench's foot until it is scrolled clear is not taken for covered.
      viewport: { width, height: 3200 },
    })
    await page.goto(baseUrl)
    await page.getByRole('button', { name: sample }).click()
    await page.waitForURL(/#\/trial\//)
    const address = page.url().replace(/\/\w+$/, '')
    for (const place of seen) {
      await page.goto(`${address}/${place.toLowerCase()}`)
      await page.getByRole('heading', { level: 1, name: place }).waitFor()
      await page.getByRole('progressbar').waitFor({ state: 'detached' })
      expect(await faultsInBothLooks(page), place).toEqual([])
      expect(await overhangPixels(page), place).toBe(0)
    }
    expect(troubles).toEqual([])
    await page.context().close()
  })
