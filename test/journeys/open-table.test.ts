import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { findServer } from '@/hub/find-server.ts'
import { type StartedHub, startedHub } from '../hub/started-hub.ts'
import { fromMenu } from './from-menu.ts'
import { readIn } from './read-in.ts'
import { outDir } from './server.ts'
import { tastingTrial, tellingOf } from './tasting-trial.ts'
import { faultsInBothLooks, openBrowser, overhangPixels, visit } from './visit.ts'

const found = findServer()
if (!found) console.log('The journey of an open table is passed over: no message server here.')

const whole = tastingTrial()
const telling = tellingOf(whole).filter((one) => !one.startsWith('"'))
const phone = { viewport: { width: 360, height: 640 }, hasTouch: true, isMobile: true }
let browser: Browser
let started: StartedHub

beforeAll(async () => {
  if (!found) return
  browser = await openBrowser()
  started = await startedHub({ app: outDir })
})
afterAll(async () => {
  await browser?.close()
  await started?.end()
})

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first()
const heading = (page: Page, name: string | RegExp) =>
  page.getByRole('heading', { level: 1, name }).waitFor()

/** Shows the code of a part on the baker's page, and brings a device of its own by it. */
async function comesBy(baker: Page, label: string, options = {}) {
  await press(baker, label).click()
  const link = await baker.locator('[data-join-link]').innerText()
  const guest = await visit(browser, started.code.page, options)
  await guest.page.goto(link)
  return guest
}

test.skipIf(!found)(
  'a table is opened from a trial: a helper works its bench, a taster answers on their own phone, and the baker sees it come in',
  async () => {
    const { page: baker, troubles } = await visit(browser, started.code.page)
    await readIn(baker, started.code.page, whole)
    const { id } = whole.trial
    await baker.goto(started.hub.here)
    await baker.getByText('The hub is known here now').waitFor()
    expect(baker.url()).not.toContain(started.code.seed)
    await baker.goto(`${started.code.page}#/trial/${id}/plan`)
    await fromMenu(baker, 'Open a table')
    await heading(baker, 'Open a table')
    await press(baker, 'Open the table').click()
    await heading(baker, 'Open table')
    await baker.getByText('The hub is there.').waitFor()

    const bench = await comesBy(baker, 'Show code of Bench', phone)
    await bench.page.getByRole('link', { name: 'To the bench' }).waitFor()
    expect(await overhangPixels(bench.page)).toBe(0)

    const taster = await comesBy(baker, 'Show code for AN', phone)
    await press(taster.page, 'I can eat this: begin').click()
    await taster.page.getByText('1 of 4').waitFor()
    await press(taster.page, /^Liking: 6(,|$)/).click()
    await press(taster.page, /^Chew: 3/).click()
    await press(taster.page, /^Seal \d{3}$/).click()
    await taster.page.getByText('2 of 4').waitFor()
    const told = await taster.page.locator('body').innerHTML()
    expect(telling.filter((one) => told.includes(one))).toEqual([])
    await baker.getByText('1 of 4 ballots').waitFor()
    expect(await faultsInBothLooks(baker)).toEqual([])
    await baker.setViewportSize({ width: 360, height: 640 })
    expect(await overhangPixels(baker)).toBe(0)
    // The message server ends a connection that a page has closed with a code that browsers remark on; nothing is lost by it.
    const remarked = [...troubles, ...taster.troubles, ...bench.troubles]
    expect(remarked.filter((line) => !line.includes('broken close frame'))).toEqual([])
    await press(baker, 'Close the table').click()
    await press(baker, 'Close it for good').click()
    await heading(baker, 'Open a table')
  },
  120_000,
)
