import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { bytesOfSlip } from '@/slip/ballot-slip.ts'
import { bytesOfLinkText, linkTextOf } from '@/slip/link-text.ts'
import { madeSlip } from '../slip/made-slip.ts'
import { draftKept } from './draft-kept.ts'
import { heldByPhone } from './held-by-phone.ts'
import { readIn } from './read-in.ts'
import { tastingTrial, tellingOf } from './tasting-trial.ts'
import { openBrowser, overhangPixels, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
const club = ['AN', 'BO', 'CY']
const { levels } = tastingTrial().plans[0] ?? { levels: [] }
const whole = tastingTrial({
  levels: levels.slice(0, 2),
  tasters: club.map((_, at) => ({ tasterId: `club-${at + 1}`, knows: false })),
})
const telling = tellingOf(whole)
const phone = { viewport: { width: 360, height: 640 }, hasTouch: true, isMobile: true }
let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first()

/** One taster's whole way on a phone of their own, with something in between; answers the link that goes back, and the code as a picture. */
async function tasteOn(page: Page, link: string, servings: number, between = async () => {}) {
  await page.goto(link)
  await press(page, 'I can eat this: begin').click()
  // The slip is kept, and gone from the address.
  expect(page.url().endsWith('#/slip')).toBe(true)
  for (let serving = 1; serving <= servings; serving += 1) {
    await page.getByText(`${serving} of ${servings}`, { exact: true }).waitFor()
    await press(page, /^Liking: [67]/).click()
    if (servings > 1) await press(page, /^Chew: 3/).click()
    if (serving === 2) {
      await draftKept(page, '3')
      await between()
      await page.locator('button[aria-pressed="true"]').nth(1).waitFor()
    }
    await press(page, /^Seal \d{3}$/).dblclick()
  }
  await page.locator('[data-scan="ready"]').waitFor()
  const picture = await page.locator('[data-scan="ready"]').screenshot()
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    press(page, 'Save as a file').click(),
  ])
  expect(download.suggestedFilename()).toBe('ballots.txt')
  const parts: Buffer[] = []
  for await (const part of await download.createReadStream()) parts.push(Buffer.from(part))
  return { back: Buffer.concat(parts).toString('utf8'), picture }
}

/** A phone that has the app from a visit before, as of a session earlier: the ballot then needs no network. */
async function loadedBefore(page: Page): Promise<void> {
  await page.goto(baseUrl)
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready
    if (!navigator.serviceWorker.controller)
      await new Promise((resolve) =>
        navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }),
      )
  })
}

async function onPhone(link: string, at: number) {
  const offline = at === 2
  const { page, troubles } = await visit(browser, baseUrl, {
    ...phone,
    ...(offline ? { serviceWorkers: 'allow' as const } : {}),
  })
  if (offline) await loadedBefore(page)
  const came = await tasteOn(page, link, at === 3 ? 1 : 2, async () => {
    if (at === 1) return
    if (offline) await page.context().setOffline(true)
    await page.reload()
  })
  if (at === 0) {
    const held = await heldByPhone(page)
    expect(telling.filter((one) => held.includes(one))).toEqual([])
    expect(await overhangPixels(page)).toBe(0)
  }
  expect(troubles.filter((line) => !line.includes('ERR_INTERNET_DISCONNECTED'))).toEqual([])
  await page.context().close()
  return came
}

test('own phones: four in contexts of their own, back by picture and by link; one sent twice, one altered, one of another tasting, one offline', async () => {
  const { page: host, troubles } = await visit(browser, baseUrl)
  await readIn(host, baseUrl, whole)
  await host.goto(`${baseUrl}#/trial/${whole.trial.id}/tasting`)
  await press(host, /On their own phones/).click()
  const links: string[] = []
  for (const name of club) {
    await press(host, `Code for ${name}`).click()
    await host.getByText(`${name} scans this`).waitFor()
    links.push((await host.locator('[data-slip-link]').textContent()) ?? '')
  }
  for (const link of links) {
    expect(bytesOfLinkText(link.split('#/slip/')[1] ?? '')?.length).toBeLessThanOrEqual(268)
    expect(telling.filter((one) => link.includes(one))).toEqual([])
  }
  const other = madeSlip(1, 1, { sets: [], tellApart: null, warmUpCode: null, asksUsual: false })
  links.push(`${baseUrl}#/slip/${linkTextOf(bytesOfSlip(other))}`)
  const [first, second, third, foreign] = await Promise.all(links.map(onPhone))
  if (!first || !second || !third || !foreign) throw new Error('four returns')
  await press(host, /Collect ballots/).click()
  const said = (text: RegExp) =>
    expect.poll(async () => (await host.getByRole('status').allInnerTexts()).join('')).toMatch(text)
  const paste = async (link: string, text: RegExp) => {
    await host.getByLabel('A link that was sent').fill(link)
    await press(host, 'Take it in').click()
    await said(text)
  }
  await host.locator('input[type=file][accept*="image"]').setInputFiles({
    name: 'photo.png',
    mimeType: 'image/png',
    buffer: first.picture,
  })
  await said(/AN is in: 2 of 2/)
  await paste(first.back, /AN was in already/)
  const bytes = bytesOfLinkText(second.back.split('#/back/')[1] ?? '') ?? new Uint8Array()
  const altered = bytes.map((byte, at) => (at === 20 ? byte ^ 4 : byte))
  await paste(linkTextOf(altered), /damaged or was changed/)
  await paste(foreign.back, /another tasting/)
  await paste(second.back, /BO is in: 2 of 2/)
  await paste(third.back, /CY is in: 2 of 2/)
  await host.getByText('Every ballot is in. The codes wait to be unsealed.').waitFor()
  expect(troubles).toEqual([])
  await host.context().close()
})
