import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { expect } from 'vitest'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { StartedHub } from '../hub/started-hub.ts'
import { fromMenu } from './from-menu.ts'
import { readIn } from './read-in.ts'
import { type Visit, visit } from './visit.ts'

/** The baker's page opens a table for a trial: the hub's link, the menu of the trial, one press. It ends at the open table. */
export async function opensTable(
  baker: Page,
  { hub, code }: StartedHub,
  whole: WholeTrial,
): Promise<void> {
  await readIn(baker, code.page, whole)
  expect(await baker.evaluate(scriptsOfClient)).toEqual([])
  await baker.goto(hub.here)
  await baker.getByText('The hub is known here now').waitFor()
  await baker.goto(`${code.page}#/trial/${whole.trial.id}/plan`)
  await fromMenu(baker, 'Open a table')
  await baker.getByRole('heading', { level: 1, name: 'Open a table', exact: true }).waitFor()
  await baker.getByRole('button', { name: 'Open the table', exact: true }).click()
  await baker.getByRole('heading', { level: 1, name: 'Open table', exact: true }).waitFor()
  await baker.getByText('The hub is there.').waitFor()
}

/** Runs in the page: the scripts loaded so far that speak the words of the message server; on one device there are none. */
async function scriptsOfClient(): Promise<string[]> {
  const scripts = performance.getEntriesByType('resource').filter(({ name }) => /\.js$/.test(name))
  if (scripts.length === 0) return ['no script was seen at all']
  const texts = await Promise.all(scripts.map(async ({ name }) => (await fetch(name)).text()))
  return scripts.flatMap(({ name }, at) => (texts[at]?.includes('$JS.API') ? [name] : []))
}

/** Shows the code of a part on the baker's page; gives the link that stands with it. */
export async function codeOf(baker: Page, label: string): Promise<string> {
  await baker.getByRole('button', { name: label, exact: true }).click()
  return await baker.locator('[data-join-link]').innerText()
}

/** A visit, and every frame that came over its lines to the hub, one sign a byte. */
export interface Guest extends Visit {
  link: string
  frames: string[]
}

/** A device of its own that comes by a link. */
export async function comesByLink(
  browser: Browser,
  link: string,
  options: BrowserContextOptions = {},
): Promise<Guest> {
  const guest = await visit(browser, link, options)
  const frames: string[] = []
  guest.page.on('websocket', (line) => {
    line.on('framereceived', ({ payload }) => {
      frames.push(typeof payload === 'string' ? payload : payload.toString('latin1'))
    })
  })
  // Many devices of one day share a machine that may be busy elsewhere.
  guest.page.setDefaultTimeout(60_000)
  await guest.page.goto(link)
  return { ...guest, link, frames }
}

/**
 * What should not have happened, but what browsers remark where a server ended a line that its page had closed, and where a line
 * does not come about while the hub is killed or the device is offline.
 */
export const realTroubles = (visits: readonly Visit[]): string[] =>
  visits.flatMap(({ troubles }) => troubles.filter((line) => !remarks.test(line)))

const remarks = /broken close frame|^WebSocket connection to .* failed/
