import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { findServer } from '@/hub/find-server.ts'
import { type StartedHub, startedHub } from '../hub/started-hub.ts'
import { codeOf, comesByLink, opensTable, realTroubles } from './open-hub-table.ts'
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
const comesBy = async (baker: Page, label: string, options = {}) =>
  await comesByLink(browser, await codeOf(baker, label), options)

test.skipIf(!found)(
  'a table is opened from a trial: a helper works its bench, a taster answers on their own phone, and the baker sees it come in',
  async () => {
    const { page: baker, troubles } = await visit(browser, started.code.page)
    await opensTable(baker, started, whole)
    expect(baker.url()).not.toContain(started.code.seed)

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

    await press(baker, 'Show code of Bench').click()
    await baker.getByText(bench.link, { exact: true }).waitFor()
    await press(baker, 'New code, the old one ends').dblclick()
    await baker.getByText('The old code is taken back: its device is cut off.').waitFor()
    await bench.page.getByText('The hub does not let this device in any more').waitFor()
    await baker.locator('[data-join-link]').waitFor()
    expect(await baker.getByText(bench.link, { exact: true }).count()).toBe(0)
    await press(bench.page, 'Leave the table').dblclick()
    await heading(bench.page, 'Notebook')
    expect(realTroubles([{ page: baker, troubles }, taster, bench])).toEqual([])
    await press(baker, 'Close the table').click()
    await press(baker, 'Close it for good').click()
    await heading(baker, 'Open a table')
  },
  120_000,
)
