import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { bytesOfLinkText, linkTextOf } from '@/slip/link-text.ts'
import { bytesOfReturn } from '@/slip/return-slip.ts'
import { madeReturn, madeSlip } from '../slip/made-slip.ts'
import { readIn } from './read-in.ts'
import { tasterNames, tastingTrial, tellingOf } from './tasting-trial.ts'
import { faultsInBothLooks, openBrowser, overhangPixels, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
const whole = tastingTrial()
const telling = tellingOf(whole)
const phone = { viewport: { width: 360, height: 640 }, hasTouch: true, isMobile: true }
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
  for (let serving = 0; serving < 4; serving += 1) {
    await press(page, new RegExp(`^Liking: ${((liking + serving) % 9) + 1}(,|$)`)).click()
    await press(page, /^Chew: 3/).click()
    if (serving === 1) {
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

test('eight tasters by their own phones: one offline, returned by picture, camera and link; duplicate, altered and foreign told apart', async () => {
  const { page: host, troubles } = await visit(browser, baseUrl)
  await readIn(host, baseUrl, whole)
  await host.goto(`${baseUrl}#/trial/${whole.trial.id}/tasting`)
  await host.getByRole('heading', { level: 1, name: 'Who is tasting?' }).waitFor()
  await press(host, /On their own phones/).click()
  const links: string[] = []
  for (const name of tasterNames) {
    await press(host, `Code for ${name}`).click()
    await host.getByText(`${name} scans this`).waitFor()
    links.push((await host.locator('[data-slip-link]').textContent()) ?? '')
  }
  expect(new Set(links).size).toBe(8)
  for (const link of links) {
    const bytes = bytesOfLinkText(link.split('#/slip/')[1] ?? '')
    expect(bytes?.length).toBeLessThanOrEqual(268)
    expect(telling.filter((one) => link.includes(one))).toEqual([])
  }
  const came: { back: string; picture: Buffer }[] = []
  for (const [at, link] of links.entries()) {
    const offline = at === 7
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
    const between = async () => {
      if (offline) await page.context().setOffline(true)
      if (at === 0 || offline) await page.reload()
      if (at === 0) {
        expect(await faultsInBothLooks(page)).toEqual([])
        expect(await overhangPixels(page)).toBe(0)
      }
    }
    came.push(await tasteOn(page, link, at, between))
    if (at === 0) {
      const held = await heldBy(page)
      expect(telling.filter((one) => held.includes(one))).toEqual([])
      expect(await faultsInBothLooks(page)).toEqual([])
      expect(await overhangPixels(page)).toBe(0)
    }
    expect(own.filter((line) => !line.includes('ERR_INTERNET_DISCONNECTED'))).toEqual([])
    await page.context().close()
  }
  await press(host, /Collect ballots/).click()
  const paste = async (text: string, said: RegExp) => {
    await host.getByLabel('A link that was sent').fill(text)
    await press(host, 'Take it in').click()
    await host.getByRole('status').filter({ hasText: said }).waitFor()
  }
  const [first, second, third, ...others] = came
  if (!first || !second || !third) throw new Error('three returns at least')
  await host.locator('input[type=file][accept*="image"]').setInputFiles({
    name: 'photo.png',
    mimeType: 'image/png',
    buffer: first.picture,
  })
  await host.getByText('AN is in: 4 of 4.').waitFor()
  await host.evaluate(
    (pictures) => {
      const canvas = document.createElement('canvas')
      canvas.width = 1280
      canvas.height = 720
      const context = canvas.getContext('2d')
      const images = pictures.map((data) => Object.assign(new Image(), { src: data }))
      let shown = 0
      const draw = () => {
        const image = images[Math.floor(shown / 25) % images.length]
        shown += 1
        context?.fillRect(0, 0, 1280, 720)
        if (image?.complete) context?.drawImage(image, 340, 60, 600, 600)
      }
      setInterval(draw, 40)
      navigator.mediaDevices.getUserMedia = async () => canvas.captureStream(25)
    },
    [second, third].map(({ picture }) => `data:image/png;base64,${picture.toString('base64')}`),
  )
  await press(host, 'Scan ballots').click()
  await host.getByText(/BO is in: 4 of 4|BO was in already/).waitFor()
  await host.getByText(/CY is in: 4 of 4|CY was in already/).waitFor()
  await press(host, 'Stop the camera').click()
  await paste(first.back, /AN was in already/)
  const [fourth] = others
  if (!fourth) throw new Error('a fourth return')
  const text = fourth.back.split('#/back/')[1] ?? ''
  const turned = bytesOfLinkText(text)?.map((byte, at) => (at === 40 ? byte ^ 4 : byte))
  await paste(linkTextOf(turned ?? new Uint8Array()), /damaged or was changed/)
  const foreign = madeSlip(4, 2)
  await paste(linkTextOf(bytesOfReturn(madeReturn(foreign), foreign.key)), /another tasting/)
  for (const [at, { back }] of others.entries())
    await paste(back, new RegExp(`${tasterNames[at + 3]} is in: 4 of 4`))
  await host.getByText('Every ballot is in. The codes wait to be unsealed.').waitFor()
  const shown = await host.locator('body').innerHTML()
  expect(telling.filter((one) => !one.startsWith('"') && shown.includes(one))).toEqual([])
  await press(host, 'Unseal the codes').click()
  await press(host, 'Unseal for good').click()
  await host.getByText('The codes are open.').waitFor()
  expect(troubles).toEqual([])
  await host.context().close()
}, 400_000)
