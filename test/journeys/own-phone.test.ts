import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { bytesOfLinkText, linkTextOf } from '@/slip/link-text.ts'
import { bytesOfReturn } from '@/slip/return-slip.ts'
import { madeReturn, madeSlip } from '../slip/made-slip.ts'
import { draftKept } from './draft-kept.ts'
import { heldByPhone } from './held-by-phone.ts'
import { readIn } from './read-in.ts'
import { tasterNames, tastingTrial, tellingOf } from './tasting-trial.ts'
import { trialOnDisk } from './trial-on-disk.ts'
import { faultsInBothLooks, openBrowser, overhangPixels, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
const { levels } = tastingTrial().plans[0] ?? { levels: [] }
const whole = tastingTrial({ levels: levels.slice(0, 2) })
const telling = tellingOf(whole)
const phone = { viewport: { width: 360, height: 640 }, hasTouch: true, isMobile: true }
let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first()

/** How a taster's return goes back, and what happens to their phone in the middle of the second ballot. */
interface Way {
  by: 'picture' | 'link'
  between?: 'reload' | 'reload without network'
}

const ways: Record<(typeof tasterNames)[number], Way> = {
  AN: { by: 'picture', between: 'reload' },
  BO: { by: 'link' },
  CY: { by: 'link', between: 'reload without network' },
  DI: { by: 'link' },
  EK: { by: 'picture' },
  FA: { by: 'picture' },
  GU: { by: 'link' },
  HO: { by: 'picture' },
}

/** What comes back: the code as a picture, or the link. */
type Back = { picture: Buffer } | { link: string }

/** One taster's whole way on a phone of their own. */
async function tasteOn(page: Page, link: string, way: Way): Promise<Back> {
  await page.goto(link)
  await press(page, 'I can eat this: begin').click()
  // The slip is kept, and gone from the address.
  expect(page.url().endsWith('#/slip')).toBe(true)
  for (const serving of [1, 2]) {
    await page.getByText(`${serving} of 2`, { exact: true }).waitFor()
    await press(page, /^Liking: [67]/).click()
    await press(page, /^Chew: 3/).click()
    if (serving === 2 && way.between) {
      await draftKept(page, '3')
      if (way.between === 'reload without network') await page.context().setOffline(true)
      await page.reload()
      await page.locator('button[aria-pressed="true"]').nth(1).waitFor()
    }
    await press(page, /^Seal \d{3}$/).dblclick()
  }
  const code = page.locator('[data-scan="ready"]')
  await code.waitFor()
  if (way.by === 'picture') return { picture: await code.screenshot() }
  return { link: await savedLink(page) }
}

/** The link of a return as it is saved on the phone. */
async function savedLink(page: Page): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    press(page, 'Save as a file').click(),
  ])
  expect(download.suggestedFilename()).toBe('ballots.txt')
  const parts: Buffer[] = []
  for await (const part of await download.createReadStream()) parts.push(Buffer.from(part))
  return Buffer.concat(parts).toString('utf8')
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

async function onPhone(name: keyof typeof ways, link: string): Promise<Back> {
  const way = ways[name]
  const offline = way.between === 'reload without network'
  const { page, troubles } = await visit(browser, baseUrl, {
    ...phone,
    ...(offline ? { serviceWorkers: 'allow' as const } : {}),
  })
  if (offline) await loadedBefore(page)
  const back = await tasteOn(page, link, way)
  if (name === 'AN') {
    const held = await heldByPhone(page)
    expect(telling.filter((one) => held.includes(one))).toEqual([])
    expect(await overhangPixels(page)).toBe(0)
  }
  expect(troubles.filter((line) => !line.includes('ERR_INTERNET_DISCONNECTED'))).toEqual([])
  await page.context().close()
  return back
}

/** Two at a time, as fast as two cores go: eight pages that load at once are slower than one after another. */
async function onPhones(links: readonly string[]): Promise<Map<string, Back>> {
  const backs = new Map<string, Back>()
  const open = tasterNames.map((name, at) => ({ name, link: links[at] ?? '' }))
  const next = async (): Promise<void> => {
    for (let one = open.shift(); one; one = open.shift())
      backs.set(one.name, await onPhone(one.name, one.link))
  }
  await Promise.all([next(), next()])
  return backs
}

/** A link with one bit turned on its way, its seal as it was. */
function altered(link: string): string {
  const bytes = bytesOfLinkText(link.split('#/back/')[1] ?? '') ?? new Uint8Array()
  return linkTextOf(bytes.map((byte, at) => (at === 20 ? byte ^ 4 : byte)))
}

test('eight by own phone in contexts of their own, back by scanned picture and by link: one twice, one altered, one of another trial, one offline', async () => {
  const { page: host, troubles } = await visit(browser, baseUrl)
  await readIn(host, baseUrl, whole)
  await host.goto(`${baseUrl}#/trial/${whole.trial.id}/tasting`)
  await press(host, /On their own phones/).click()
  const links: string[] = []
  for (const name of tasterNames) {
    await press(host, `Code for ${name}`).click()
    await host.getByText(`${name} scans this`).waitFor()
    links.push((await host.locator('[data-slip-link]').textContent()) ?? '')
  }
  for (const link of links) {
    expect(bytesOfLinkText(link.split('#/slip/')[1] ?? '')?.length).toBeLessThanOrEqual(268)
    expect(telling.filter((one) => link.includes(one))).toEqual([])
  }
  const backs = await onPhones(links)
  await press(host, /Collect ballots/).click()
  const said = (text: RegExp) =>
    expect.poll(async () => (await host.getByRole('status').allInnerTexts()).join('')).toMatch(text)
  const paste = async (link: string, text: RegExp) => {
    await host.getByLabel('A link that was sent').fill(link)
    await press(host, 'Take it in').click()
    await said(text)
  }
  const linkOf = (name: string) => {
    const back = backs.get(name)
    if (!back || !('link' in back)) throw new Error(`a link of ${name}`)
    return back.link
  }
  const slipOfOther = madeSlip(1, 1)
  const foreign = linkTextOf(bytesOfReturn(madeReturn(slipOfOther), slipOfOther.key))
  await paste(foreign, /another tasting/)
  await paste(altered(linkOf('DI')), /damaged or was changed/)
  for (const [name, back] of backs) {
    const isIn = new RegExp(`${name} is in: 2 of 2`)
    if ('link' in back) {
      await paste(back.link, isIn)
      continue
    }
    await host.locator('input[type=file][accept*="image"]').setInputFiles({
      ...{ name: 'photo.png', mimeType: 'image/png', buffer: back.picture },
    })
    await said(isIn)
  }
  await paste(linkOf('BO'), /BO was in already/)
  await host.getByText('Every ballot is in. The codes wait to be unsealed.').waitFor()
  for (const name of tasterNames)
    await host
      .getByRole('row', { name: new RegExp(`^${name}\\b`) })
      .getByText('2 / 2')
      .waitFor()
  expect(troubles).toEqual([])
  await host.context().close()
}, 300_000)

/** Two flatbreads as baked, tasted by one; with what was drawn to come first and second. */
function twoAsBaked() {
  const [taster] = tastingTrial().plans[0]?.tasters ?? []
  if (!taster) throw new Error('somebody tastes')
  const made = tastingTrial({
    ...{ levels: levels.slice(0, 2), serving: 'as-baked', tasters: [taster] },
  })
  const [session] = made.sessions
  const [order] = session?.dealt.tasterOrders ?? []
  const [first, second] = (order?.servingIds ?? []).map((id) =>
    session?.dealt.servings.find((serving) => serving.id === id),
  )
  if (!first || !second) throw new Error('two servings')
  return { made, first, second }
}

test('as baked, another code stands on the plate than the phone asks of: two presses go there, what was pressed comes along, and the record keeps at which place it came', async () => {
  const { made, first, second } = twoAsBaked()
  const { page: host, troubles } = await visit(browser, baseUrl)
  await readIn(host, baseUrl, made)
  await host.goto(`${baseUrl}#/trial/${made.trial.id}/tasting`)
  await press(host, /On their own phones/).click()
  await press(host, 'Code for AN').click()
  const link = (await host.locator('[data-slip-link]').textContent()) ?? ''

  const { page, troubles: onPhone } = await visit(browser, baseUrl, phone)
  const title = (name: string) => page.getByRole('heading', { level: 1, name, exact: true })
  await page.goto(link)
  await press(page, 'I can eat this: begin').click()
  // The slip was given out before the oven; on the plate lies what the host put there first.
  await title(first.code).waitFor()
  await press(page, /^Liking: 7/).click()
  await draftKept(page, '7')
  await press(page, 'Another code').click()
  await title('Which code is on your plate?').waitFor()
  expect(await faultsInBothLooks(page)).toEqual([])
  expect(await overhangPixels(page)).toBe(0)
  await page.getByRole('switch', { name: `What I pressed for ${first.code} was about` }).click()
  await page.getByRole('button', { name: second.code, exact: true }).click()
  await title(second.code).waitFor()
  await page.getByRole('button', { name: /^Liking: 7/, pressed: true }).waitFor()
  await press(page, /^Chew: 3/).click()
  await press(page, `Seal ${second.code}`).click()
  await title(first.code).waitFor()
  // Nothing is scored of it yet; where one code is left there is no other.
  expect(await page.locator('button[aria-pressed="true"]').count()).toBe(0)
  expect(await page.getByRole('button', { name: 'Another code', exact: true }).count()).toBe(0)
  await press(page, /^Liking: 4/).click()
  await press(page, /^Chew: 2/).click()
  await press(page, `Seal ${first.code}`).click()
  await page.locator('[data-scan="ready"]').waitFor()
  const back = await savedLink(page)

  await press(host, /Collect ballots/).click()
  await host.getByLabel('A link that was sent').fill(back)
  await press(host, 'Take it in').click()
  await host.getByText('AN is in: 2 of 2').first().waitFor()
  const { ballots } = await trialOnDisk(host)
  const said = ({ id }: { id: string }) => {
    const ballot = ballots.find(({ about }) => about.id === id)
    return { position: ballot?.position, answers: ballot?.answers.map(({ value }) => value) }
  }
  expect(said(second)).toEqual({ position: 1, answers: [7, 3] })
  expect(said(first)).toEqual({ position: 2, answers: [4, 2] })
  expect([...troubles, ...onPhone]).toEqual([])
  await page.context().close()
  await host.context().close()
})
