import { readFileSync } from 'node:fs'
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { copyWithNewIds } from '@/trial-file/copy-with-new-ids.ts'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { fromMenu } from './from-menu.ts'
import { openBrowser, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

/** The largest sample, and the same grown by notes to a file of two megabytes. */
function trialFiles() {
  const sample = readFileSync(
    new URL('../../trials/focaccia-hydration.json', import.meta.url),
    'utf8',
  )
  const read = readTrialFile(sample)
  if (!read.ok) throw new Error('the sample reads')
  const kitchen = new Set(read.whole.kitchen.map(({ id }) => id))
  let ids = 0
  const whole = copyWithNewIds(read.whole, () => `copy-${++ids}`, kitchen)
  const last = whole.events.at(-1)
  if (!last) throw new Error('the sample has a log')
  const { id: _, about, ...stamp } = last
  const notes = Array.from({ length: 1_000 }, (_, index) => ({
    ...{ trialId: stamp.trialId, sessionId: stamp.sessionId, device: stamp.device },
    ...{ at: stamp.at, zone: stamp.zone, about, kind: 'note' as const },
    ...{ id: `long-note-${index}`, count: 100_000 + index, text: `${index} `.padEnd(1_700, 'so ') },
  }))
  const grown = writeTrialFile({ ...whole, events: [...whole.events, ...notes] })
  return { sample, grown }
}

const give = (page: Page, accept: string, files: { name: string; text: string | Uint8Array }[]) =>
  page.locator(`input[type=file][accept*=${accept}]`).setInputFiles(
    files.map(({ name, text }) => ({
      ...{ name, mimeType: 'application/octet-stream' },
      buffer: Buffer.from(text),
    })),
  )

async function backUp(page: Page): Promise<Uint8Array> {
  const saving = page.waitForEvent('download', { timeout: 60_000 })
  await fromMenu(page, 'Back up all')
  return readFileSync(await (await saving).path())
}

test('the largest sample and a trial of two megabytes are backed up, and come back on another device', async () => {
  const { sample, grown } = trialFiles()
  expect(grown.length).toBeGreaterThan(2_000_000)
  const first = await visit(browser, baseUrl)
  await first.page.goto(baseUrl)
  await first.page.getByRole('heading', { level: 1, name: 'Notebook' }).waitFor()
  await give(first.page, 'json', [
    { name: 'sample.json', text: sample },
    { name: 'grown.json', text: grown },
  ])
  const lines = (page: Page) =>
    page.getByRole('list', { name: 'Trials' }).getByRole('heading', { level: 2 })
  await expect.poll(() => lines(first.page).count()).toBe(2)
  const zip = await backUp(first.page)
  const kept = Object.entries(unzipSync(zip)).filter(([name]) => name.startsWith('trials/'))
  expect(new Set(kept.map(([, bytes]) => strFromU8(bytes)))).toEqual(new Set([sample, grown]))
  expect(first.troubles).toEqual([])

  const second = await visit(browser, baseUrl)
  await second.page.goto(baseUrl)
  await second.page.getByRole('heading', { level: 1, name: 'Notebook' }).waitFor()
  await give(second.page, 'zip', [{ name: 'mine.zip', text: zip }])
  await second.page.getByText('2 trials of 2 would come in.').waitFor()
  expect(await lines(second.page).count()).toBe(0)
  await second.page.getByRole('button', { name: 'Restore it' }).click()
  await second.page.getByText('2 trials came in').waitFor()
  await expect.poll(() => lines(second.page).count()).toBe(2)
  expect(second.troubles).toEqual([])

  const torn = unzipSync(zip)
  torn['trials/torn.json'] = strToU8('{ "format": ')
  await give(second.page, 'zip', [{ name: 'torn.zip', text: zipSync(torn) }])
  await second.page.getByText('2 are here already, the same to the last entry.').waitFor()
  await second.page.getByRole('button', { name: 'Restore it' }).click()
  const record = page(second.page)
  await record.getByText('2 were here already').waitFor()
  await record.getByText(/trials\/torn\.json: Line 1/).waitFor()
  await first.page.context().close()
  await second.page.context().close()
})

const page = (of: Page) => of.getByRole('region', { name: 'Restored from' })
