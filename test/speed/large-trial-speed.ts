import type { Page } from 'playwright-core'
import { type BuiltApp, readTrialsIn } from './built-app.ts'
import { largeTrial } from './large-trial.ts'

/** What must be in sight before a place counts as open. */
const places = [
  {
    place: 'plan',
    sight: (page: Page) => page.getByRole('button', { name: /^The question/ }),
  },
  { place: 'bench', sight: (page: Page) => page.getByRole('region', { name: 'Now' }) },
  { place: 'tasting', sight: (page: Page) => page.getByText('The codes are open.') },
  {
    place: 'findings',
    sight: (page: Page) => page.getByRole('list', { name: 'How far this carries' }),
  },
  { place: 'report', sight: (page: Page) => page.getByRole('button', { name: 'Trial file' }) },
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
    await sight(page).first().waitFor({ timeout: 120_000 })
    say(`12 levels x 20 tasters x 6 sessions: ${place} is open`, Date.now() - from)
    await page.waitForTimeout(3000)
    const longest = await page.evaluate<number>('Math.max(0, ...held)')
    say(`12 levels x 20 tasters x 6 sessions: longest held frame, ${place}`, longest)
  }
}
