import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { AxeResults } from 'axe-core'
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core'
import { CHROMIUM_ARGS, findChromium } from '../browser/chromium.mjs'

const axeSource = readFileSync(
  createRequire(import.meta.url).resolve('axe-core/axe.min.js'),
  'utf8',
)

export async function openBrowser(): Promise<Browser> {
  const found = await findChromium()
  return chromium.launch({
    ...(found ? { executablePath: found.path } : {}),
    args: CHROMIUM_ARGS,
  })
}

export interface Visit {
  page: Page
  /** Everything that should not have happened: console errors, page errors, requests to another host. */
  troubles: string[]
}

/** A fresh page with a notebook of its own, watched for errors and for calls that leave this machine. */
export async function visit(
  browser: Browser,
  baseUrl: string,
  options: BrowserContextOptions = {},
): Promise<Visit> {
  const context = await browser.newContext({ reducedMotion: 'reduce', ...options })
  const page = await context.newPage()
  const troubles: string[] = []
  page.on('console', (line) => {
    if (line.type() === 'error' || line.type() === 'warning') troubles.push(line.text())
  })
  page.on('pageerror', (error) => troubles.push(String(error)))
  page.on('request', (request) => {
    const { protocol, origin } = new URL(request.url())
    if (protocol !== 'data:' && protocol !== 'blob:' && origin !== new URL(baseUrl).origin)
      troubles.push(`a request to ${request.url()}`)
  })
  return { page, troubles }
}

/** What axe finds against the page as it stands: rule and element, one line each. */
export async function accessibilityFaults(page: Page): Promise<string[]> {
  await page.evaluate(axeSource)
  const results = await page.evaluate<AxeResults>(
    "axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] })",
  )
  return results.violations.flatMap((rule) =>
    rule.nodes.map((node) => `${rule.id}: ${node.target.join(' ')} (${node.failureSummary ?? ''})`),
  )
}

/** How many pixels the page is wider than its window: 0 on a page that fits. */
export function overhangPixels(page: Page): Promise<number> {
  return page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  )
}
