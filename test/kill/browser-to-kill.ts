import { type ChildProcess, spawn } from 'node:child_process'
import { existsSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { chromium, type Page } from 'playwright-core'
import { CHROMIUM_ARGS, findChromium } from '../browser/chromium.mjs'

/** A browser on a profile of its own, whose processes can be killed without a word of warning. */
export interface BrowserToKill {
  page: Page
  kill: () => Promise<void>
}

const chromiumFound = findChromium()

const patienceMilliseconds = 120_000

/** Starts a browser on the profile in `folder` and opens a page in it; `under` is a command that runs and watches it. */
export async function browserToKill(
  folder: string,
  under: readonly string[] = [],
): Promise<BrowserToKill> {
  const found = await chromiumFound
  if (!found) throw new Error('no Chromium was found')
  const portFile = join(folder, 'DevToolsActivePort')
  rmSync(portFile, { force: true })
  const args = [
    ...CHROMIUM_ARGS,
    ...[
      '--headless=new',
      '--remote-debugging-port=0',
      '--no-first-run',
      '--disable-gpu',
      '--disable-extensions',
      '--disable-background-networking',
    ],
    ...[`--user-data-dir=${folder}`, 'about:blank'],
  ]
  // A process group of its own, so that the kill reaches every process of this browser and no other.
  const [command = found.path, ...words] = [...under, found.path]
  const browser = spawn(command, [...words, ...args], { detached: true, stdio: 'ignore' })
  try {
    const port = await portIn(portFile)
    const client = await chromium.connectOverCDP(`http://127.0.0.1:${port}`, {
      timeout: patienceMilliseconds,
    })
    const context = client.contexts()[0]
    const page = context?.pages()[0] ?? (await context?.newPage())
    if (!page) throw new Error('the browser has no page')
    return { page, kill: () => killed(browser) }
  } catch (cause) {
    await killed(browser)
    throw cause
  }
}

async function portIn(file: string): Promise<string> {
  const until = Date.now() + patienceMilliseconds
  for (;;) {
    const [port] = existsSync(file) ? readFileSync(file, 'utf8').split('\n') : []
    if (port) return port
    if (Date.now() > until) throw new Error('the browser opened no port')
    await new Promise((resolve) => setTimeout(resolve, 20))
  }
}

async function killed(browser: ChildProcess): Promise<void> {
  const { pid } = browser
  if (pid === undefined || browser.exitCode !== null || browser.signalCode !== null) return
  const gone = new Promise((resolve) => browser.once('exit', resolve))
  process.kill(-pid, 'SIGKILL')
  await gone
}
