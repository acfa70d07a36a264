import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { newTrial } from './new-trial.ts'
import { openBrowser, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

/** Milliseconds from one tap to the next of a finger that bounces or taps twice. */
const gaps = [60, 150, 300, 450]

/** Everything in the log and every sealed ballot, as they lie on disk. */
async function kept(page: Page): Promise<{ events: string[]; ballots: number; drafts: number }> {
  return page.evaluate(async () => {
    const [found] = await indexedDB.databases()
    const all = (name: string) =>
      new Promise<Record<string, unknown>[]>((resolve, reject) => {
        const open = indexedDB.open(found?.name ?? '')
        open.onerror = () => reject(open.error)
        open.onsuccess = () => {
          const asked = open.result.transaction(name).objectStore(name).getAll()
          asked.onsuccess = () => {
            open.result.close()
            resolve(asked.result)
          }
        }
      })
    const events = (await all('events')).toSorted((a, b) => Number(a.count) - Number(b.count))
    const scored = (await all('drafts')).filter(
      ({ key, values }) =>
        String(key).startsWith('ballot/') && Object.keys(Object(values)).length > 1,
    )
    return {
      events: events.map((event) => String(event.kind)),
      ballots: (await all('ballots')).length,
      drafts: scored.length,
    }
  })
}

/** Two taps of one finger on the very same spot. */
async function tapTwice(page: Page, name: string | RegExp, gap: number): Promise<void> {
  const button = page.getByRole('button', { name, exact: typeof name === 'string' })
  const before = await kept(page)
  // Waits until the place takes a press, without pressing.
  await button.click({ trial: true })
  const box = await button.boundingBox()
  if (!box) throw new Error(`no place of ${name}`)
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  await page.touchscreen.tap(x, y)
  await page.waitForTimeout(gap)
  await page.touchscreen.tap(x, y)
  await expect.poll(async () => sum(await kept(page)), { message: `${name}` }).not.toBe(sum(before))
  // Long enough for a second entry to be written, were there one.
  await page.waitForTimeout(900)
}

const sum = ({ events, ballots }: { events: string[]; ballots: number }) => events.length + ballots

async function begunSession(page: Page): Promise<void> {
  await page.goto(baseUrl)
  await newTrial(page)
  await page.getByLabel('Question', { exact: true }).fill('Which water suits our bread?')
  for (const initials of ['AB', 'CD']) {
    await page.getByLabel('New taster').fill(initials)
    await page.getByRole('button', { name: 'Add taster' }).click()
    await page.getByRole('group', { name: initials }).waitFor()
  }
  await page.getByRole('button', { name: 'Begin session 1' }).click()
  await page.getByRole('heading', { level: 1, name: 'Bench', exact: true }).waitFor()
}

const newEvents = async (page: Page, before: readonly string[]) =>
  (await kept(page)).events.slice(before.length)

test('a second tap on the same spot logs nothing: weighing, Begin, and the end of a step', async () => {
  const { page, troubles } = await visit(browser, baseUrl, {
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
  })
  await begunSession(page)
  await page.getByRole('button', { name: 'Weigh', exact: true }).click()
  for (const gap of gaps) {
    const before = (await kept(page)).events
    await tapTwice(page, /^The scale shows/, gap)
    expect(await newEvents(page, before), `weighing, ${gap} ms`).toEqual(['weighed'])
  }
  // With the fourth weight all is weighed, and the dough is in front again.
  for (const gap of gaps) {
    const before = (await kept(page)).events
    await tapTwice(page, 'Begin', gap)
    const first = gap === gaps[0] ? ['lock', 'step-started'] : ['step-started']
    expect(await newEvents(page, before), `Begin, ${gap} ms`).toEqual(first)
    await tapTwice(page, 'Hands off', gap)
    const resting = [...first, 'hands-off']
    expect(await newEvents(page, before), `Hands off, ${gap} ms`).toEqual(resting)
    // The next dough comes before this rest is over, and so to the front: the resting one by its tab.
    await page.locator('nav[aria-label^="Doughs"] button', { hasText: 'rest' }).click()
    await page.getByRole('button', { name: 'Rest over and Fold 1 of 2 begins' }).click()
    await tapTwice(page, 'End the rest now', gap)
    expect(await newEvents(page, before), `Done and Fold 1, ${gap} ms`).toEqual([
      ...resting,
      'step-stopped',
      'step-started',
    ])
    await page.getByRole('button', { name: /^Undo “[A-Z]: Mix done” and “Fold 1/ }).click()
    await page.getByRole('button', { name: /^Undo “[A-Z]: Mix: hands off”$/ }).click()
    await page.getByRole('button', { name: /^Undo “[A-Z]: Mix begun”$/ }).click()
    await page.getByRole('button', { name: 'Begin', exact: true }).waitFor()
  }
  expect(troubles).toEqual([])
  await page.context().close()
})

test('a second tap on Seal neither scores nor seals the next sample', async () => {
  const { page, troubles } = await visit(browser, baseUrl, {
    viewport: { width: 360, height: 640 },
    hasTouch: true,
    isMobile: true,
  })
  await begunSession(page)
  await page.getByRole('button', { name: 'Place: Bench' }).click()
  await page.getByRole('link', { name: 'Tasting', exact: true }).click()
  for (const initials of ['AB', 'CD']) {
    await page.getByRole('button', { name: new RegExp(`^${initials}`) }).click()
    await page.getByRole('button', { name: 'I can eat this: begin' }).click()
    for (const gap of initials === 'AB' ? [60, 150] : [300, 450]) {
      await page.getByRole('button', { name: /^Liking: 6(,|$)/ }).click()
      await page.getByRole('button', { name: /^Softness of crumb: 4/ }).click()
      const before = await kept(page)
      await tapTwice(page, /^Seal \d{3}$/, gap)
      // The next sample is open, and nothing is scored of it.
      expect(await page.locator('button[aria-pressed="true"]').count(), `${gap} ms`).toBe(0)
      expect((await kept(page)).ballots, `${gap} ms`).toBe(before.ballots + 1)
    }
    await page.getByRole('button', { name: 'Leave', exact: true }).click()
    await page.getByRole('button', { name: 'Hand on', exact: true }).click()
  }
  expect(troubles).toEqual([])
  await page.context().close()
})
