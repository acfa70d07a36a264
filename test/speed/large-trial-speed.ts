import type { Page } from 'playwright-core'
import { type BuiltApp, readTrialsIn } from './built-app.ts'
import { largeTrial } from './large-trial.ts'

/** What must be in sight before a place counts as open: by its element, since a search by role is work of the page and would be measured with it. */
const places = [
  { place: 'plan', sight: '#plan-fairness' },
  { place: 'bench', sight: 'section[aria-label="Now"]' },
  { place: 'tasting', sight: 'main table' },
  { place: 'findings', sight: 'ol[aria-label="How far this carries"]' },
  { place: 'report', sight: 'main article' },
] as const

/** Notes every piece of work that holds up a frame, from before the page's first line of script. */
async function watchFrames(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const held: number[] = []
    Object.assign(window, { held })
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) held.push(duration)
    }).observe({ type: 'longtask', buffered: true })
  })
}

/** Opens each place of the largest trial anew and says how long it took, and how long a frame was held up meanwhile. */
export async function measureLarge(
  app: BuiltApp,
  say: (what: string, value: number, unit?: string) => void,
): Promise<void> {
  const page = await app.open()
  await readTrialsIn(page, [largeTrial()])
  await watchFrames(page)
  const id = largeTrial().trial.id
  for (const { place, sight } of places) {
    await page.goto(`${app.address}manifest.webmanifest`)
    const from = Date.now()
    await page.goto(`${app.address}#/trial/${id}/${place}`)
    await page.locator(sight).first().waitFor({ timeout: 120_000 })
    say(`12 levels x 20 tasters x 6 sessions: ${place} is open`, Date.now() - from)
    await page.waitForTimeout(3000)
    const longest = await page.evaluate<number>('Math.max(0, ...held)')
    say(`12 levels x 20 tasters x 6 sessions: longest held frame, ${place}`, longest)
  }
}
