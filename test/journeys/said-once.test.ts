import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { bytesOfSlip } from '@/slip/ballot-slip.ts'
import { linkTextOf } from '@/slip/link-text.ts'
import { madeSlip } from '../slip/made-slip.ts'
import { openBrowser, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
const phone = { viewport: { width: 360, height: 640 }, hasTouch: true, isMobile: true }
let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first()

test('who said that they warmed up and rested is asked neither after another code nor after a reload', async () => {
  const slip = madeSlip(3, 1, {
    ...{ sets: [], tellApart: null, asksUsual: false, ranking: null, allergens: [] },
    ...{ asTheyCome: true, warmUpCode: '905', rest: { restSeconds: 45, pauseSeconds: 0 } },
  })
  const [one = '', other = '', third = ''] = slip.codes
  const { page, troubles } = await visit(browser, baseUrl, phone)
  const title = (name: string) => page.getByRole('heading', { level: 1, name, exact: true })
  const rest = page.getByText(/^Rest for \d+ seconds more\.$/)
  const goTo = async (code: string) => {
    await press(page, 'Another code').click()
    await title('Which code is on your plate?').waitFor()
    await page.getByRole('button', { name: code, exact: true }).click()
    await title(code).waitFor()
  }
  await page.goto(`${baseUrl}#/slip/${linkTextOf(bytesOfSlip(slip))}`)
  await press(page, 'I can eat this: begin').click()
  await title('905').waitFor()
  await press(page, 'I have tasted it').click()
  await rest.waitFor()
  await page.reload()
  // The rest is still to be said; the sample to warm up with is not asked for again.
  await title(one).waitFor()
  await rest.waitFor()
  await goTo(other)
  await press(page, `${other}: I have it`).click()
  await press(page, /^Liking: 6/).waitFor()
  await goTo(one)
  await press(page, /^Liking: 6/).click()
  await press(page, `Seal ${one}`).click()
  // The rest of the next begins with the seal, and is asked for once.
  await page.getByText(`${one} sealed`).waitFor()
  await rest.waitFor()
  await goTo(third)
  await page.reload()
  await page.getByText(`${one} sealed`).waitFor()
  await press(page, `${third}: I have it`).click()
  await press(page, /^Liking: 6/).waitFor()
  await goTo(other)
  await press(page, /^Liking: 6/).waitFor()
  await page.getByRole('button', { name: `Change ${one}` }).waitFor()
  await page.reload()
  await title(other).waitFor()
  await press(page, /^Liking: 6/).waitFor()
  expect(troubles).toEqual([])
  await page.context().close()
})
