import { readFileSync } from 'node:fs'
import type { Page } from 'playwright-core'
import { fromMenu } from '../journeys/from-menu.ts'
import type { BuiltApp } from './built-app.ts'
import { readTrialsIn } from './built-app.ts'
import { dayForSpeed } from './day-for-speed.ts'
import { copyTrial } from './home-speed.ts'

const trials = 2000
const patience = { timeout: 500_000 }

/** Backs up a notebook of very many trials and restores it on another device, where a restore is stopped and taken up again. */
export async function measureBackup(
  app: BuiltApp,
  say: (what: string, value: number, unit?: string) => void,
): Promise<void> {
  const first = await app.open()
  await readTrialsIn(first, [dayForSpeed(1)])
  await copyTrial(first, trials - 1)
  await first.goto(app.address)
  const asked = Date.now()
  const saving = first.waitForEvent('download', patience)
  await fromMenu(first, 'Back up all')
  const zip = readFileSync(await (await saving).path())
  say('backing up 2,000 trials', Date.now() - asked)

  const second = await app.open()
  await give(second, zip)
  const began = Date.now()
  await second.getByText(/Restoring: \d+ of 2000 trials/).waitFor(patience)
  say('restoring 2,000 trials: first word of how far it is', Date.now() - began)
  await second.getByRole('button', { name: 'Stop' }).click()
  const stopped = Date.now()
  await second.getByText(/Stopped; .* still to come/).waitFor(patience)
  say('restoring 2,000 trials: from Stop to its end', Date.now() - stopped)
  await give(second, zip)
  const again = Date.now()
  await second.getByText(/\d+ trials came in, \d+ were here already\.$/).waitFor(patience)
  say('restoring 2,000 trials with the notebook open, some here already', Date.now() - again)
}

const give = async (page: Page, zip: Buffer) => {
  await page
    .locator('input[type=file][accept*=zip]')
    .setInputFiles({ name: 'mine.zip', mimeType: 'application/zip', buffer: zip })
  await page.getByRole('button', { name: 'Restore it' }).click(patience)
}
