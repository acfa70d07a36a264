import type { Page } from 'playwright-core'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'

/** Reads a trial into the notebook of the page as a person does, by its file; it opens at its plan. */
export async function readIn(page: Page, baseUrl: string, whole: WholeTrial): Promise<void> {
  await page.goto(baseUrl)
  await page.getByRole('heading', { level: 1, name: 'Notebook' }).waitFor()
  await page.locator('input[type=file][accept*=json]').setInputFiles({
    name: 'trial.evenhand.json',
    mimeType: 'application/json',
    buffer: Buffer.from(writeTrialFile(whole)),
  })
  await page.waitForURL(/#\/trial\/[\w-]+\/plan$/)
}
