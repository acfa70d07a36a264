import { type Browser, chromium, type Page } from 'playwright-core'
import { CHROMIUM_ARGS, findChromium } from '../browser/chromium.mjs'

/** A browser that may keep a page it leaves whole, and bring it back by Back as it was; its driver forbids that by itself. */
export async function openKeepingPages(): Promise<Browser> {
  const found = await findChromium()
  return chromium.launch({
    ...(found ? { executablePath: found.path } : {}),
    args: CHROMIUM_ARGS,
    ignoreDefaultArgs: ['--disable-back-forward-cache'],
  })
}

/**
 * Leaves the page for another document, and comes back by Back once `meanwhile` is over. Where this browser keeps no pages (a
 * headless shell has no such cache) the page stays, and is told the same two words as one that was kept. Answers whether the very
 * page came back, and not one that was loaded anew.
 */
export async function awayAndBack(
  page: Page,
  { keeps, elsewhere }: { keeps: boolean; elsewhere: string },
  meanwhile: () => Promise<void>,
): Promise<boolean> {
  const url = page.url()
  await page.evaluate(() => {
    const back = ({ persisted }: PageTransitionEvent) =>
      Object.assign(globalThis, { cameBack: persisted })
    addEventListener('pageshow', back, { once: true })
  })
  if (keeps) await page.goto(elsewhere)
  else await tell(page, 'pagehide')
  await meanwhile()
  if (!keeps) await tell(page, 'pageshow')
  else await goBack(page, url)
  return await page.evaluate(() => Reflect.get(globalThis, 'cameBack') === true)
}

/** By Back to what stood there before; a page that was kept does not load. */
async function goBack(page: Page, url: string): Promise<void> {
  await page.evaluate(() => {
    setTimeout(() => history.back())
  })
  await page.waitForURL(url, { waitUntil: 'commit' })
}

const tell = (page: Page, word: 'pagehide' | 'pageshow') =>
  page.evaluate((type) => {
    dispatchEvent(new PageTransitionEvent(type, { persisted: true }))
  }, word)

/** Whether the browser keeps pages at all: a bare one is left and called back. */
export async function keepsPages(browser: Browser, bare: string, other: string): Promise<boolean> {
  const context = await browser.newContext()
  const page = await context.newPage()
  await page.goto(bare)
  await page.evaluate(() => Object.assign(globalThis, { stays: true }))
  await page.goto(other)
  await goBack(page, bare)
  const stays = await page.evaluate(() => Reflect.get(globalThis, 'stays') === true)
  await context.close()
  return stays
}
