import { cpSync, mkdirSync, rmSync, statSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { build, preview } from 'vite'
import { openBrowser } from '../journeys/visit.ts'
import { comparePictures, pictureFaultsText } from './compare-pictures.ts'

const accepted = join('docs', 'pictures')
const outDir = 'dist-pictures'
const taken = join('dist-pictures-taken', 'now')
const beside = join('dist-pictures-taken', 'old-and-new')

/** The clock of every picture, so that dates do not change from run to run. */
const takenAt = new Date('2026-11-21T10:00:00Z')

const sizes = {
  wide: { width: 1280, height: 900 },
  phone: { width: 360, height: 780 },
} as const
type Size = keyof typeof sizes
type Appearance = 'light' | 'dark'

const looks: readonly (readonly [Size, Appearance])[] = [
  ['wide', 'light'],
  ['phone', 'light'],
]
const darkToo: readonly (readonly [Size, Appearance])[] = [
  ...looks,
  ['wide', 'dark'],
  ['phone', 'dark'],
]

/** One place: which sample it is shown with, how it is reached, and in which looks. */
interface Shot {
  place: string
  sample: RegExp | null
  looks: typeof looks
  ready?: (page: Page) => Promise<void>
}

const shots: readonly Shot[] = [
  { place: 'notebook', sample: null, looks },
  { place: 'new', sample: null, looks },
  { place: 'kitchen', sample: null, looks },
  { place: 'plan', sample: /flatbread/, looks: darkToo },
  { place: 'bench', sample: /flatbread/, looks: darkToo },
  { place: 'findings', sample: /focaccia/, looks: darkToo },
  { place: 'report', sample: /focaccia/, looks: darkToo },
  // Last: once a taster sits at the device every other way is closed.
  { place: 'tasting', sample: /flatbread/, looks: darkToo, ready: showBallot },
]

/**
 * Builds the app as a person gets it, takes the pictures of the documentation from the sample trials and compares them with
 * the accepted ones: a changed, new or missing one fails, until `--accept` puts the taken ones in the place of the old.
 */
export async function run(asked: string[]): Promise<number> {
  await build({ logLevel: 'error', build: { outDir, emptyOutDir: true } })
  const server = await preview({
    logLevel: 'error',
    build: { outDir },
    preview: { port: 0, host: '127.0.0.1' },
  })
  const address = server.httpServer.address()
  if (address === null || typeof address === 'string') throw new Error('the server has no port')
  const browser = await openBrowser()
  rmSync(taken, { recursive: true, force: true })
  mkdirSync(taken, { recursive: true })
  try {
    for (const [size, appearance] of darkToo)
      await takeAll(browser, `http://127.0.0.1:${address.port}/`, size, appearance)
  } finally {
    await browser.close()
    await server.close()
  }
  const faults = comparePictures(taken, accepted, beside)
  if (faults.length === 0) return 0
  if (asked.includes('--accept')) {
    rmSync(accepted, { recursive: true, force: true })
    cpSync(taken, accepted, { recursive: true })
    console.log(`accepted: ${faults.map(({ name }) => name).join(', ')}`)
    return 0
  }
  console.error(pictureFaultsText(faults, beside))
  return 1
}

async function takeAll(browser: Browser, baseUrl: string, size: Size, appearance: Appearance) {
  const context = await browser.newContext({
    viewport: sizes[size],
    colorScheme: appearance,
    reducedMotion: 'reduce',
    locale: 'en-GB',
    timezoneId: 'Europe/Vienna',
    hasTouch: size === 'phone',
  })
  const page = await context.newPage()
  const opened = new Map<string, string>()
  for (const [at, sample] of [/salt/, /focaccia/, /flatbread/].entries()) {
    // A minute apart: of one moment they would stand in the notebook in the order of chance.
    await page.clock.setFixedTime(takenAt.getTime() + (at - 2) * 60_000)
    await page.goto(baseUrl)
    await page.getByRole('button', { name: sample }).click()
    await page.waitForURL(/#\/trial\//)
    opened.set(sample.source, page.url().replace(/\/\w+$/, ''))
  }
  for (const shot of shots) {
    if (!shot.looks.some(([wide, look]) => wide === size && look === appearance)) continue
    const trial = shot.sample ? opened.get(shot.sample.source) : undefined
    const path = shot.place === 'notebook' ? '' : shot.place
    await page.goto(trial ? `${trial}/${path}` : `${baseUrl}#/${path}`)
    await page.getByRole('heading', { level: 1 }).waitFor()
    await settled(page)
    await shot.ready?.(page)
    await take(page, `${shot.place}-${size}-${appearance}.png`)
  }
  await context.close()
}

/** Until nothing is computed or loaded any more. */
async function settled(page: Page): Promise<void> {
  await page.getByRole('progressbar').waitFor({ state: 'detached' })
  await page.waitForLoadState('networkidle')
  await page.evaluate('document.fonts.ready.then(() => true)')
  await page.waitForTimeout(1500)
}

/** The first taster's first ballot, as it lies before them; nothing is sealed. */
async function showBallot(page: Page): Promise<void> {
  await page
    .getByRole('button', { name: /^(BM|DR|EL|JO|VW)\b/ })
    .first()
    .click()
  await page.waitForTimeout(500)
}

async function take(page: Page, name: string): Promise<void> {
  const path = join(taken, name)
  await page.mouse.move(0, 0)
  await page.evaluate('document.activeElement?.blur?.(); window.scrollTo(0, 0)')
  await page.screenshot({ path })
  console.log(`${path} ${Math.round(statSync(path).size / 1024)} kB`)
}
