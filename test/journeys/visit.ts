import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { AxeResults } from 'axe-core'
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core'
import { CHROMIUM_ARGS, findChromium } from '../browser/chromium.mjs'

const axeSource = readFileSync(
  createRequire(import.meta.url).resolve('axe-core/axe.min.js'),
  'utf8',
)

/** A browser of the journeys; `more` are switches of its command line, as for a stand-in camera. */
export async function openBrowser(more: readonly string[] = []): Promise<Browser> {
  const found = await findChromium()
  return chromium.launch({
    ...(found ? { executablePath: found.path } : {}),
    args: [...CHROMIUM_ARGS, ...more],
  })
}

export interface Visit {
  page: Page
  /** Everything that should not have happened: console errors, page errors, requests to another host. */
  troubles: string[]
}

/** A fresh page with a notebook of its own, without the kept program (a journey of its own tries that), watched for errors and for calls that leave this machine. */
export async function visit(
  browser: Browser,
  baseUrl: string,
  options: BrowserContextOptions = {},
): Promise<Visit> {
  const context = await browser.newContext({
    ...{ reducedMotion: 'reduce', serviceWorkers: 'block', ...options },
  })
  const page = await context.newPage()
  return { page, troubles: troublesOf(page, baseUrl) }
}

/** From now on everything that should not happen on a page. */
export function troublesOf(page: Page, baseUrl: string): string[] {
  const troubles: string[] = []
  page.on('console', (line) => {
    if (line.type() !== 'error' && line.type() !== 'warning') return
    if (!line.text().includes('Service Worker registration blocked')) troubles.push(line.text())
  })
  page.on('pageerror', (error) => troubles.push(String(error)))
  page.on('request', (request) => {
    const { protocol, origin } = new URL(request.url())
    if (protocol !== 'data:' && protocol !== 'blob:' && origin !== new URL(baseUrl).origin)
      troubles.push(`a request to ${request.url()}`)
  })
  return troubles
}

/** Parts far from view rest with the size they had when last drawn: each is drawn once as it is now, as for who scrolls by. */
async function drawAll(page: Page): Promise<void> {
  await page.evaluate(async () => {
    // A window as tall as the page draws all of it by itself.
    if (document.documentElement.scrollHeight <= window.innerHeight) return
    const drawn = () => new Promise((done) => requestAnimationFrame(done))
    for (const part of document.querySelectorAll('section[id]')) {
      part.scrollIntoView()
      await drawn()
      await drawn()
    }
    for (const each of document.querySelectorAll('*')) if (each.scrollTop > 0) each.scrollTop = 0
    window.scrollTo(0, 0)
    await drawn()
  })
}

/** All that axe knows of the standards, and its good habits; and of these what colours decide. */
const rules = {
  all: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
  ofColour: { type: 'rule', values: ['color-contrast', 'link-in-text-block'] },
}

/** What axe finds against the page as it stands: rule and element, one line each. Only faults leave the page: all that passes is long. */
export async function accessibilityFaults(
  page: Page,
  runOnly: keyof typeof rules = 'all',
): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axeSource)
  await drawAll(page)
  const options = { runOnly: rules[runOnly], resultTypes: ['violations'] }
  const violations = await page.evaluate<AxeResults['violations']>(
    `axe.run(document, ${JSON.stringify(options)}).then(({ violations }) => violations)`,
  )
  return violations.flatMap((rule) =>
    rule.nodes.map((node) => `${rule.id}: ${node.target.join(' ')} (${node.failureSummary ?? ''})`),
  )
}

/** The faults in light and in dark of one page: in dark the document is the same, so only what colours decide is asked again. */
export async function faultsInBothLooks(page: Page): Promise<string[]> {
  await page.emulateMedia({ colorScheme: 'light' })
  const light = await accessibilityFaults(page)
  await page.emulateMedia({ colorScheme: 'dark' })
  const dark = await accessibilityFaults(page, 'ofColour')
  return [...light.map((fault) => `light: ${fault}`), ...dark.map((fault) => `dark: ${fault}`)]
}

/** How many pixels the page is wider than its window: 0 on a page that fits. */
export function overhangPixels(page: Page): Promise<number> {
  return page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  )
}

/** How many pages a PDF has: each is an object of its own, written plainly. */
export const pagesOf = (pdf: Buffer) =>
  [...pdf.toString('latin1').matchAll(/\/Type\s*\/Page\b/g)].length
