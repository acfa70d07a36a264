import { type Browser, chromium, type Page } from 'playwright-core'
import { build, preview } from 'vite'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { CHROMIUM_ARGS, findChromium } from '../browser/chromium.mjs'

const outDir = 'dist-speed'

/** The built app as a person opens it: each `open` is a browser of its own with an empty notebook. */
export interface BuiltApp {
  address: string
  open: () => Promise<Page>
}

/** Builds the app, serves it and hands it to the work; whatever comes of it, server and browsers end. */
export async function withBuiltApp(work: (app: BuiltApp) => Promise<void>): Promise<void> {
  process.env.NODE_ENV = 'production'
  await build({ mode: 'production', logLevel: 'error', build: { outDir, emptyOutDir: true } })
  const server = await preview({ logLevel: 'error', build: { outDir }, preview: { port: 0 } })
  const address = server.resolvedUrls?.local[0] ?? ''
  const browsers: Browser[] = []
  try {
    const found = await findChromium()
    const open = async () => {
      const browser = await chromium.launch({
        ...(found ? { executablePath: found.path } : {}),
        args: CHROMIUM_ARGS,
      })
      browsers.push(browser)
      const page = await browser.newPage({ viewport: { width: 1280, height: 900 } })
      await page.goto(address)
      return page
    }
    await work({ address, open })
  } finally {
    for (const browser of browsers) await browser.close()
    await server.close()
  }
}

/** Reads trials in as files, as a person does, and waits until the last stands in the list. */
export async function readTrialsIn(page: Page, trials: readonly WholeTrial[]): Promise<void> {
  const files = trials.map((whole) => ({
    name: `${whole.trial.id}.evenhand.json`,
    mimeType: 'application/json',
    buffer: Buffer.from(writeTrialFile(whole)),
  }))
  await page.locator('input[type=file][accept*=json]').setInputFiles(files)
  const question = trials.at(-1)?.plans[0]?.question ?? ''
  await page.getByText(question).first().waitFor({ timeout: 120_000 })
}

/** The middle of some measurements. */
export const middleOf = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN
