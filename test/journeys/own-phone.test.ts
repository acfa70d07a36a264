import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { bytesOfLinkText, linkTextOf } from '@/slip/link-text.ts'
import { bytesOfReturn } from '@/slip/return-slip.ts'
import { madeReturn, madeSlip } from '../slip/made-slip.ts'
import { draftKept } from './draft-kept.ts'
import { readIn } from './read-in.ts'
import { tastingTrial, tellingOf } from './tasting-trial.ts'
import { faultsInBothLooks, openBrowser, overhangPixels, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
const club = ['AN', 'BO', 'CY']
const { levels } = tastingTrial().plans[0] ?? { levels: [] }
const whole = tastingTrial({
  levels: levels.slice(0, 2),
  tasters: club.map((_, at) => ({ tasterId: `club-${at + 1}`, knows: false })),
})
const telling = tellingOf(whole)
const phone = {
  viewport: { width: 360, height: 640 },
  // As phones are: at one pixel a point the modules of a code come out uneven.
  deviceScaleFactor: 3,
  hasTouch: true,
  isMobile: true,
}
let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first()

/** All a phone holds of a slip: page, address, title, history, and what the browser keeps. */
async function heldBy(page: Page): Promise<string> {
  const kept = await page.evaluate(async () => {
    const names = (await indexedDB.databases()).map(({ name }) => name ?? '')
    const all: unknown[] = [{ ...localStorage }, { ...sessionStorage }, document.cookie]
    for (const name of names) {
      const db = await new Promise<IDBDatabase>((done, failed) => {
        const asked = indexedDB.open(name)
        asked.onsuccess = () => done(asked.result)
        asked.onerror = () => failed(asked.error)
      })
      for (const store of db.objectStoreNames)
        all.push(
          await new Promise((done) => {
            const asked = db.transaction(store).objectStore(store).getAll()
            asked.onsuccess = () => done(asked.result)
          }),
        )
      db.close()
    }
    return JSON.stringify(all)
  })
  const cdp = await page.context().newCDPSession(page)
  const { entries } = await cdp.send('Page.getNavigationHistory')
  return [
    await page.locator('body').innerHTML(),
    page.url(),
    await page.title(),
    ...entries.map(({ url, title }) => `${url} ${title}`),
    kept,
  ].join('\n')
}

/** One taster's whole way on a phone of their own; answers the link that goes back and the code as a picture. */
async function tasteOn(page: Page, link: string, liking: number, between = async () => {}) {
  await page.goto(link)
  await page.getByText('Contains cereals with gluten and milk.').waitFor()
  expect(page.url().endsWith('#/slip')).toBe(true)
  await press(page, 'I can eat this: begin').click()
  for (let serving = 0; serving < 2; serving += 1) {
    await press(page, new RegExp(`^Liking: ${((liking + serving) % 9) + 1}(,|$)`)).click()
    await press(page, /^Chew: 3/).click()
    if (serving === 1) {
      await draftKept(page, '3')
      await between()
      await press(page, /^Chew: 3/)
        .and(page.locator('[aria-pressed="true"]'))
        .waitFor()
    }
    await press(page, /^Seal \d{3}$/).dblclick()
  }
  await page.getByText('Show this to the host.').waitFor()
  await page.locator('[data-scan="ready"]').waitFor()
  const picture = await page.locator('[data-scan="ready"]').screenshot()
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    press(page, 'Save as a file').click(),
  ])
  expect(download.suggestedFilename()).toBe('ballots.txt')
  const stream = await download.createReadStream()
  const parts: Buffer[] = []
  for await (const part of stream) parts.push(part as Buffer)
  return { back: Buffer.concat(parts).toString('utf8'), picture }
}

test('own phones: returned by picture and by link, one of them offline; a duplicate, an altered and a foreign one are told apart', async () => {
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
  const came = await Promise.all(
    links.map(async (link, at) => {
      const offline = at === 2
      const { page, troubles: own } = await visit(browser, baseUrl, {
        ...phone,
        ...(offline ? { serviceWorkers: 'allow' as const } : {}),
      })
      if (offline) {
        await page.goto(baseUrl)
        await page.evaluate(async () => {
          await navigator.serviceWorker.ready
          if (!navigator.serviceWorker.controller)
            await new Promise((resolve) =>
              navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }),
            )
        })
      }
      const back = await tasteOn(page, link, at, async () => {
        if (offline) await page.context().setOffline(true)
        if (at !== 1) await page.reload()
      })
      if (at === 0) {
        const held = await heldBy(page)
        expect(telling.filter((one) => held.includes(one))).toEqual([])
        expect(await faultsInBothLooks(page)).toEqual([])
        expect(await overhangPixels(page)).toBe(0)
      }
      expect(own.filter((line) => !line.includes('ERR_INTERNET_DISCONNECTED'))).toEqual([])
      await page.context().close()
      return back
    }),
  )
  await press(host, /Collect ballots/).click()
  const paste = async (text: string, said: RegExp) => {
    await host.getByLabel('A link that was sent').fill(text)
    await press(host, 'Take it in').click()
    await host.getByRole('status').filter({ hasText: said }).waitFor()
  }
  const [first, second, third] = came
  if (!first || !second || !third) throw new Error('three returns')
  await host.locator('input[type=file][accept*="image"]').setInputFiles({
    name: 'photo.png',
    mimeType: 'image/png',
    buffer: first.picture,
  })
  await host.getByRole('status').filter({ hasText: 'AN is in: 2 of 2.' }).waitFor()
  await paste(first.back, /AN was in already/)
  const turned = bytesOfLinkText(second.back.split('#/back/')[1] ?? '')?.map((byte, at) =>
    at === 20 ? byte ^ 4 : byte,
  )
  await paste(linkTextOf(turned ?? new Uint8Array()), /damaged or was changed/)
  const foreign = madeSlip(2, 2)
  await paste(linkTextOf(bytesOfReturn(madeReturn(foreign), foreign.key)), /another tasting/)
  await paste(second.back, /BO is in: 2 of 2/)
  await paste(third.back, /CY is in: 2 of 2/)
  await host.getByText('Every ballot is in. The codes wait to be unsealed.').waitFor()
  expect(troubles).toEqual([])
  await host.context().close()
})
