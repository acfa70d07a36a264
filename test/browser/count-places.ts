import type { Page } from 'playwright-core'
import { withBuiltApp } from '../speed/built-app.ts'

const windows = [
  { width: 390, height: 844 },
  { width: 1280, height: 900 },
] as const

/** The sample with five levels and three sessions, the largest there is; Bench and Tasting are shown on one whose day is under way. */
const places = [
  { place: 'Notebook', sample: null, path: '' },
  { place: 'Kitchen', sample: null, path: 'kitchen' },
  { place: 'Plan', sample: /focaccia/, path: 'plan' },
  { place: 'Bench', sample: /flatbread/, path: 'bench' },
  { place: 'Tasting', sample: /flatbread/, path: 'tasting' },
  { place: 'Findings', sample: /focaccia/, path: 'findings' },
  { place: 'Report', sample: /focaccia/, path: 'report' },
] as const

interface Counted {
  place: string
  screens: number
  wordsFirst: number
  words: number
}

/** Counts, on the built app, how many screens and words each place has at each window, and prints both tables for docs/places.md. */
export async function run(): Promise<void> {
  await withBuiltApp(async ({ address, open }) => {
    for (const size of windows) {
      const page = await open()
      await page.setViewportSize(size)
      const counted = await countAll(page, address)
      console.log(`\nAt ${size.width} × ${size.height}:\n`)
      console.log('| place | screens | words on the first | words in all |')
      console.log('| --- | ---: | ---: | ---: |')
      for (const { place, screens, wordsFirst, words } of counted)
        console.log(`| ${place} | ${screens.toFixed(1)} | ${wordsFirst} | ${words} |`)
    }
  })
}

async function countAll(page: Page, baseUrl: string): Promise<Counted[]> {
  const opened = new Map<string, string>()
  for (const sample of [/focaccia/, /flatbread/]) {
    await page.goto(baseUrl)
    await page.getByRole('button', { name: sample }).click()
    await page.waitForURL(/#\/trial\//)
    opened.set(sample.source, page.url().replace(/\/\w+$/, ''))
  }
  const counted: Counted[] = []
  for (const { place, sample, path } of places) {
    const trial = sample ? opened.get(sample.source) : undefined
    await page.goto(trial ? `${trial}/${path}` : `${baseUrl}#/${path}`)
    await page.getByRole('heading', { level: 1 }).waitFor()
    await page.getByRole('progressbar').waitFor({ state: 'detached' })
    await page.waitForLoadState('networkidle')
    await page.waitForTimeout(2000)
    counted.push({ place, ...(await countOf(page)) })
  }
  return counted
}

/** Screens by the height of the page; words as they can be read, those of the first screen by where they stand. */
function countOf(page: Page): Promise<Omit<Counted, 'place'>> {
  return page.evaluate(() => {
    const height = window.innerHeight
    let words = 0
    let wordsFirst = 0
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    const range = document.createRange()
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const parent = node.parentElement
      if (!parent?.checkVisibility({ visibilityProperty: true })) continue
      for (const { 0: word, index } of (node.textContent ?? '').matchAll(/[\p{L}\p{N}][^\s]*/gu)) {
        range.setStart(node, index)
        range.setEnd(node, index + word.length)
        const { top, bottom, width } = range.getBoundingClientRect()
        if (width <= 1) continue
        words += 1
        if (top < height && bottom > 0) wordsFirst += 1
      }
    }
    return { screens: document.documentElement.scrollHeight / height, wordsFirst, words }
  })
}
