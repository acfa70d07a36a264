import { readFileSync } from 'node:fs'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { openBrowser, overhangPixels, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

/** One word of 190 letters without a place to break, told apart by its first. */
const long = (first: string) => first.padEnd(190, 'wheaten')

/** A sample in which everything that a person names is one long word. */
function longWorded(sample: string): { id: string; file: string } {
  const read = readTrialFile(readFileSync(`trials/${sample}.json`, 'utf8'))
  if (!read.ok) throw new Error('the sample is a trial')
  const { whole } = read
  const plans = whole.plans.map((plan) => ({
    ...plan,
    question: long('Q'),
    servingRule: long('R'),
    factor: { ...plan.factor, name: long('F') },
    levels: plan.levels.map((level, at) => ({ ...level, label: long(`L${at}`) })),
    steps: plan.steps.map((step, at) => ({ ...step, name: long(`S${at}`) })),
    responses: plan.responses.map((response, at) => ({ ...response, name: long(`P${at}`) })),
    formula: {
      ...plan.formula,
      ingredients: plan.formula.ingredients.map((one, at) => ({ ...one, name: long(`I${at}`) })),
    },
  }))
  const kitchen = whole.kitchen.map((thing, at) =>
    thing.kind === 'taster'
      ? { ...thing, initials: `T${at}`.padEnd(12, 'W') }
      : { ...thing, name: long(`K${at}`) },
  )
  const events = whole.events.map((event) =>
    event.kind === 'note' ? { ...event, text: long('N') } : event,
  )
  const trial = { ...whole.trial, note: long('M') }
  return { id: trial.id, file: writeTrialFile({ ...whole, trial, plans, kitchen, events }) }
}

const readIn = async (page: Page, file: string) => {
  await page.goto(baseUrl)
  await page.getByRole('heading', { level: 1, name: 'Notebook' }).waitFor()
  await page.locator('input[type=file][accept*=json]').setInputFiles({
    name: 'trial.evenhand.json',
    mimeType: 'application/json',
    buffer: Buffer.from(file),
  })
  await page.waitForURL(/#\/trial\/[\w-]+\/plan$/)
}

/** What stands out over the right edge and is not kept in by a box that scrolls or cuts: named, so that it can be found. */
const whatSticksOut = (page: Page) =>
  page.evaluate(() => {
    const width = document.documentElement.clientWidth
    const isKept = (one: Element | null): boolean =>
      one !== null &&
      one !== document.body &&
      (getComputedStyle(one).overflowX !== 'visible' || isKept(one.parentElement))
    return [...document.body.querySelectorAll('*')]
      .filter((one) => one.getBoundingClientRect().right > width + 1 && !isKept(one))
      .map((one) => `${one.tagName}.${one.getAttribute('class')}: ${one.textContent?.slice(0, 30)}`)
      .slice(-4)
  })

/** Ordinary words that stand on more than one line: what gives way to a long word must not break a short one. The letters in a check sum are no words: its 64 figures may break anywhere. */
const brokenWords = (page: Page) =>
  page.evaluate(() => {
    const broken: string[] = []
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    const range = document.createRange()
    for (let node = walker.nextNode(); node; node = walker.nextNode())
      if ((node.parentElement?.getBoundingClientRect().width ?? 0) > 1)
        for (const { 0: word, index } of (node.textContent ?? '').matchAll(
          /[\da-f]{64}|\p{Letter}{2,14}/gu,
        )) {
          if (word.length > 14) continue
          range.setStart(node, index)
          range.setEnd(node, index + word.length)
          const tops = [...range.getClientRects()].map(({ top }) => Math.round(top))
          if (new Set(tops).size > 1) broken.push(`${word} in ${node.textContent}`.slice(0, 60))
        }
    return broken
  })

async function expectFits(page: Page, where: string): Promise<void> {
  // Columns take their widths a moment after the window changed its own.
  let over = await overhangPixels(page)
  for (let left = 30; over > 1 && left > 0; left -= 1) {
    await page.waitForTimeout(100)
    over = await overhangPixels(page)
  }
  // Borders of a table laid on fractions of a pixel may round up by one.
  expect.soft(over <= 1 ? '' : `${over} px: ${await whatSticksOut(page)}`, where).toBe('')
}

/** Between its margins of 14 mm a sheet of A4 is 182 mm wide: 688 px of 1/96 inch. */
const sheetWidth = 688

async function expectPrintFits(page: Page, where: string): Promise<void> {
  const size = page.viewportSize() ?? { width: sheetWidth, height: 900 }
  await page.emulateMedia({ media: 'print' })
  await page.setViewportSize({ ...size, width: sheetWidth })
  await expectFits(page, where)
  await page.setViewportSize(size)
  await page.emulateMedia({ media: null })
}

/** The report as a file of its own, on screen and on paper. */
async function expectReportFits(page: Page, width: number): Promise<void> {
  const saving = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Report as HTML' }).click()
  const html = readFileSync(await (await saving).path(), 'utf8')
  expect(html).toContain(long('Q'))
  const file = await page.context().newPage()
  await file.setViewportSize({ width, height: 900 })
  await file.setContent(html)
  await expectFits(file, 'the report as a file')
  await expectPrintFits(file, 'the report as a file, printed')
  await file.close()
}

const places = ['Plan', 'Bench', 'Tasting', 'Findings', 'Report']
/** One eaten hot on a phone, one rested on a desk: between them every place, at both widths. */
const visits = [
  { sample: 'flatbread-hydration', width: 360 },
  { sample: 'pan-loaf-salt', width: 1280 },
]

for (const { sample, width } of visits)
  test(`words of 190 letters in ${sample} break no place, report or print at ${width} px`, async () => {
    const { page, troubles } = await visit(browser, baseUrl, { viewport: { width, height: 900 } })
    const { id, file } = longWorded(sample)
    await readIn(page, file)
    for (const place of places) {
      await page.goto(`${baseUrl}#/trial/${id}/${place.toLowerCase()}`)
      await page.getByRole('heading', { level: 1, name: place }).waitFor()
      await page.getByRole('progressbar').waitFor({ state: 'detached' })
      await expectFits(page, place)
      await expectPrintFits(page, `${place}, printed`)
    }
    await expectReportFits(page, width)
    for (const place of ['', 'kitchen']) {
      await page.goto(`${baseUrl}#/${place}`)
      await page.getByRole('heading', { level: 1 }).waitFor()
      await page
        .getByText(place === '' ? long('Q') : long('K0'))
        .first()
        .waitFor()
      await expectFits(page, `#/${place}`)
    }
    expect(troubles).toEqual([])
    await page.context().close()
  })

for (const width of [360, 1280])
  test(`no ordinary word is broken at ${width} px`, async () => {
    const { page } = await visit(browser, baseUrl, { viewport: { width, height: 900 } })
    for (const place of ['', 'kitchen']) {
      await page.goto(`${baseUrl}#/${place}`)
      await page.getByRole('heading', { level: 1 }).waitFor()
      if (place === '') await page.getByRole('button', { name: /focaccia/ }).waitFor()
      expect.soft(await brokenWords(page), `#/${place}`).toEqual([])
    }
    await readIn(page, readFileSync('trials/flatbread-hydration.json', 'utf8'))
    for (const place of places) {
      await page.goto(page.url().replace(/\w+$/, place.toLowerCase()))
      await page.getByRole('heading', { level: 1, name: place }).waitFor()
      await page.getByRole('progressbar').waitFor({ state: 'detached' })
      expect.soft(await brokenWords(page), place).toEqual([])
    }
    await page.context().close()
  })
