import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { findServer } from '@/hub/find-server.ts'
import { freePort } from '@/hub/free-port.ts'
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
  // A name in the network that leads to this machine: plain http there is what it is in a kitchen.
  browser = await openBrowser(['--host-resolver-rules=MAP kitchen.test 127.0.0.2'])
  started = await startedHub({ app: outDir })
})
afterAll(async () => {
  await browser?.close()
  await started?.end()
})

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first()
const heading = (page: Page, name: string | RegExp) =>
  page.getByRole('heading', { level: 1, name }).waitFor()

const elsewhere = (page: Page) =>
  page
    .getByRole('heading', { name: 'The plan is changed on another device', exact: true })
    .waitFor()

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

    await press(baker, 'Hand it to Bench').dblclick()
    await bench.page.getByRole('link', { name: 'To the plan' }).click()
    await bench.page.getByText('is begun on the baker’s device').first().waitFor()
    await baker.goto(`${started.code.page}#/trial/${whole.trial.id}/plan`)
    await elsewhere(baker)
    await press(bench.page, /^The question/).click()
    await bench.page.getByLabel('Question', { exact: true }).fill('Is it the water?')
    await baker.getByText('Is it the water?', { exact: true }).waitFor()
    await baker.goto(`${started.code.page}#/table/${whole.trial.id}`)
    await press(baker, 'Take the plan back').dblclick()
    await elsewhere(bench.page)
    await bench.page.goto(`${started.code.page}#/join`)

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
    await press(baker, 'Close the table').dblclick()
    await press(baker, 'Close it for good').dblclick()
    await heading(baker, 'Open a table')
  },
  120_000,
)

test.skipIf(!found)(
  'on plain http it is said before anybody comes that nothing is sealed, helpers are not let in, and each press does its work once',
  async () => {
    const port = await freePort()
    const page = `http://kitchen.test:${port}/`
    const plain = await startedHub({ app: outDir, port, lan: '127.0.0.2', page })
    try {
      const { here, there } = plain.hub
      const inNetwork = { ...plain, code: { ...plain.code, page } }
      const { page: baker, troubles } = await visit(browser, page)
      await opensTable(baker, { ...inNetwork, hub: { ...plain.hub, here: there ?? here } }, whole)
      await baker.getByText('Nothing is sealed at this table').waitFor()
      expect(await baker.getByRole('button', { name: 'Show code of Bench' }).count()).toBe(0)
      await press(baker, 'Show code for AN').dblclick()
      const link = await baker.locator('[data-join-link]').innerText()
      expect(link.startsWith(page)).toBe(true)
      await press(baker, 'Copy the link').click()
      await baker.getByText('mark the link below').waitFor()

      const taster = await comesByLink(browser, link, phone)
      await taster.page.getByText('Nothing is sealed on this way').waitFor()
      expect(taster.frames).toEqual([])
      await press(taster.page, 'Come to the table all the same').dblclick()
      await press(taster.page, 'I can eat this: begin').click()
      await press(taster.page, /^Liking: 6(,|$)/).click()
      await press(taster.page, /^Chew: 3/).click()
      await press(taster.page, /^Seal \d{3}$/).click()
      await baker.getByText('1 of 4 ballots').waitFor()
      await press(baker, 'Take it back').dblclick()
      await baker.getByText('The old code is taken back').waitFor()
      await press(baker, 'Make a code').dblclick()
      await baker.locator('[data-join-link]').waitFor()
      expect(await baker.getByText(link, { exact: true }).count()).toBe(0)
      await press(baker, 'Close the table').dblclick()
      await press(baker, 'Close it for good').dblclick()
      await heading(baker, 'Open a table')
      expect(realTroubles([{ page: baker, troubles }, taster])).toEqual([])
    } finally {
      await plain.end()
    }
  },
  120_000,
)
