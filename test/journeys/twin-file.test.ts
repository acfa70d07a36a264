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

const sample = readFileSync('trials/pan-loaf-salt.json', 'utf8')

/** The sample as it went on elsewhere: one note more in its log. */
function goneOn(): string {
  const read = readTrialFile(sample)
  if (!read.ok) throw new Error('the sample reads')
  const { whole } = read
  const last = whole.events.at(-1)
  if (!last) throw new Error('the sample has a log')
  const { trialId, sessionId, at, zone, about } = last
  const note = { kind: 'note' as const, text: 'crust softened overnight', device: 'elsewhere' }
  const stamp = { trialId, sessionId, at: at + 1000, zone, about }
  return writeTrialFile({
    ...whole,
    events: [...whole.events, { ...stamp, ...note, id: 'note-of-elsewhere', count: 1 }],
  })
}

async function give(page: Page, name: string, text: string): Promise<void> {
  await page
    .locator('input[type=file][accept*=json]')
    .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) })
}

const trials = (page: Page) =>
  page.getByRole('list', { name: 'Trials' }).getByRole('heading', { level: 2 })

test('a file whose trial is here says what is newer; what is new is taken in, both are kept, or nothing is touched', async () => {
  const { page, troubles } = await visit(browser, baseUrl, {
    viewport: { width: 360, height: 780 },
  })
  await page.goto(baseUrl)
  await give(page, 'loaf.json', sample)
  await page.waitForURL(/plan$/)
  await page.goto(baseUrl)
  await expect.poll(() => trials(page).count()).toBe(1)

  await give(page, 'loaf-elsewhere.json', goneOn())
  const title = page.getByText('loaf-elsewhere.json: this trial is already here')
  await title.waitFor()
  await page.getByText('The file is newer: it has 1 log entry that the notebook lacks.').waitFor()
  expect(await overhangPixels(page)).toBe(0)
  await page.getByRole('button', { name: 'Leave the notebook as it is' }).click()
  await title.waitFor({ state: 'detached' })

  await give(page, 'loaf-elsewhere.json', goneOn())
  await page.getByRole('button', { name: 'Take in what is new' }).click()
  await page.getByText('loaf-elsewhere.json: 1 log entry came in').waitFor()
  await expect.poll(() => trials(page).count()).toBe(1)

  // The older copy again: what it lacks stands here, and nothing of it is new.
  await give(page, 'loaf.json', sample)
  await page.getByText('loaf.json: this trial is already here').waitFor()
  await page.getByRole('button', { name: 'Keep both' }).click()
  await page.getByText('loaf.json came in').waitFor()
  await expect.poll(() => trials(page).count()).toBe(2)
  expect(troubles).toEqual([])
  await page.context().close()
})
