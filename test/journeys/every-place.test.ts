import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { sampleTrial } from '../core/findings/sample-trial.ts'
import { newTrial } from './new-trial.ts'
import { panLoaf } from './pan-loaf.ts'
import { readIn } from './read-in.ts'
import { faultsInBothLooks, openBrowser, overhangPixels, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

/** Tall, so that what merely lies under a foot until it is scrolled clear is not taken for covered. */
const phone = { width: 360, height: 3200 }

/** A phone lying on the bench. */
const lying = { width: 844, height: 390 }

/** A place as it stands: no fault of axe's in light or dark on a phone, and not wider than a phone, a desk, or a phone at text of 200 %. */
async function expectLooksRight(page: Page, where: string): Promise<void> {
  await page.getByRole('progressbar').waitFor({ state: 'detached' })
  expect.soft(await faultsInBothLooks(page), where).toEqual([])
  expect.soft(await moving(page), `${where}, motion reduced`).toEqual([])
  expect.soft(await overhangPixels(page), `${where}, 360 px`).toBe(0)
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '200%'
  })
  expect.soft(await settledOverhang(page), `${where}, 360 px, text at 200 %`).toBe('')
  await page.evaluate(() => {
    document.documentElement.style.fontSize = ''
  })
  await page.setViewportSize({ width: 1280, height: 900 })
  expect.soft(await settledOverhang(page), `${where}, 1280 px`).toBe('')
  await page.setViewportSize(phone)
}

/** Columns take their widths a moment after the window or its text changed; what still stands out then is named, but for what a box keeps in. */
async function settledOverhang(page: Page): Promise<string> {
  let over = await overhangPixels(page)
  for (let left = 20; over > 0 && left > 0; left -= 1) {
    await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(drawn)))
    over = await overhangPixels(page)
  }
  if (over === 0) return ''
  return page.evaluate(() => {
    const edge = document.documentElement.clientWidth
    const isKept = (one: Element | null): boolean =>
      one !== null &&
      one !== document.body &&
      (getComputedStyle(one).overflowX !== 'visible' || isKept(one.parentElement))
    return [...document.body.querySelectorAll('*')]
      .filter((one) => one.getBoundingClientRect().right > edge + 1 && !isKept(one))
      .map((one) => `${one.tagName}.${one.getAttribute('class')}: ${one.textContent?.slice(0, 30)}`)
      .slice(-3)
      .join(' | ')
  })
}

/** What moves or turns for longer than a hundredth of a second although less motion was asked for, as in every visit. */
function moving(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll('*')].flatMap((one) =>
      ['', '::before', '::after'].flatMap((part) => {
        const { transitionDuration, animationDuration, animationName } = getComputedStyle(one, part)
        const times = `${transitionDuration}, ${animationName === 'none' ? '0s' : animationDuration}`
        const longest = Math.max(...times.split(',').map((time) => Number.parseFloat(time)))
        return longest > 0.01 ? [`${one.tagName}${part}: ${longest} s`] : []
      }),
    ),
  )
}

/** Where colours are forced: each level by its words in a frame of its own, the lit one by its ring and by its column's edges. */
async function expectLevelsToldApart(page: Page): Promise<void> {
  await page.emulateMedia({ forcedColors: 'active' })
  const tabs = page.getByRole('navigation', { name: /^Levels/ }).getByRole('button')
  await tabs.nth(1).click()
  const seen = await tabs.evaluateAll((places) => {
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur()
    return places.map((place) => {
      const looks = [place, ...place.querySelectorAll('*')].map((part) => getComputedStyle(part))
      return {
        words: place.textContent,
        framed: looks.some(({ borderStyle }) => borderStyle.includes('solid')),
        ringed: looks.some(({ outlineStyle }) => outlineStyle === 'solid'),
      }
    })
  })
  expect(new Set(seen.map(({ words }) => words)).size).toBe(5)
  expect(seen.map(({ framed }) => framed)).toEqual([true, true, true, true, true])
  expect(seen.map(({ ringed }) => ringed)).toEqual([false, true, false, false, false])
  await tabs.nth(1).click()
  await page.emulateMedia({ forcedColors: 'none' })
}

/** Where colours are forced: a press that cannot be pressed yet has another edge than one that can. */
async function expectDisabledToldApart(page: Page): Promise<void> {
  await page.emulateMedia({ forcedColors: 'active' })
  const edge = (name: string) =>
    page
      .getByRole('button', { name, exact: true })
      .evaluate((press) => getComputedStyle(press).borderBlockStartStyle)
  expect(await edge('Print the weigh sheet')).toBe('solid')
  expect(await edge('Print tub labels')).toBe('dashed')
  await page.emulateMedia({ forcedColors: 'none' })
}

const pages = [
  ['#/', 'Notebook'],
  ['#/kitchen', 'Kitchen'],
  ['#/about', 'About Evenhand'],
  ['#/no/such/page', 'Nothing at this address'],
  ['#/new', 'New trial'],
] as const

test('the pages outside a trial and a new plan with all of it open look right in light and dark, and call nobody', async () => {
  const { page, troubles } = await visit(browser, baseUrl, { viewport: phone })
  for (const [address, heading] of pages) {
    await page.goto(`${baseUrl}${address}`)
    await page.getByRole('heading', { level: 1, name: heading }).waitFor()
    await expectLooksRight(page, heading)
  }
  await page.goto(baseUrl)
  await newTrial(page)
  await expectLooksRight(page, 'a new plan, open')
  await expectDisabledToldApart(page)
  expect(troubles).toEqual([])
  await page.context().close()
})

test('the places of the samples look right in light and dark, findings and report opened, and call nobody', async () => {
  const { page, troubles } = await visit(browser, baseUrl, { viewport: phone })
  const go = async (sample: string, place: string) => {
    await page.goto(`${baseUrl}#/trial/${sampleTrial(sample).trial.id}/${place}`)
    await page.getByRole('heading', { level: 1, name: new RegExp(place, 'i') }).waitFor()
    await page.getByRole('progressbar').waitFor({ state: 'detached' })
  }
  for (const sample of ['pan-loaf-salt', 'flatbread-hydration', 'focaccia-hydration'])
    await readIn(page, baseUrl, sampleTrial(sample))
  // The last one read in is open at its plan: the kitchen keeps the way back to it, over a reload too.
  await page.getByRole('button', { name: 'Menu', exact: true }).click()
  await page.getByRole('link', { name: 'Kitchen', exact: true }).click()
  const back = page.getByRole('link', {
    name: /^Back to the plan of “How wet should our focaccia be/,
  })
  await back.waitFor()
  await page.reload()
  await page
    .getByText(/Mixing work/)
    .first()
    .waitFor()
  await back.waitFor()
  await expectLooksRight(page, 'a kitchen with things')
  await back.click()
  await page.waitForURL(/plan$/)
  await go('focaccia-hydration', 'plan')
  await expectLooksRight(page, 'plan')
  await go('focaccia-hydration', 'findings')
  await openFindings(page)
  await expectLooksRight(page, 'findings, opened')
  await expectLevelsToldApart(page)
  await go('focaccia-hydration', 'report')
  await page.getByRole('button', { name: /^Appendix/ }).click()
  await page.getByRole('heading', { name: 'How to check it' }).waitFor()
  await expectLooksRight(page, 'report, opened')
  await go('flatbread-hydration', 'bench')
  await expectLooksRight(page, 'bench')
  await page.setViewportSize(lying)
  expect.soft(await faultsInBothLooks(page), 'bench, lying').toEqual([])
  expect.soft(await settledOverhang(page), 'bench, lying').toBe('')
  await page.setViewportSize(phone)
  const loaf = panLoaf()
  await readIn(page, baseUrl, loaf)
  await page.goto(`${baseUrl}#/trial/${loaf.trial.id}/plan/clock`)
  await page.getByRole('button', { name: 'Keep these times', exact: true }).waitFor()
  await page.getByRole('button', { name: /^Other times/ }).click()
  await page
    .getByLabel(/^Helper 1 comes/)
    .first()
    .waitFor()
  await expectLooksRight(page, 'the day by the clock, a helper’s hours open')
  await go('pan-loaf-salt', 'findings')
  await page
    .getByText(/^No difference shows/)
    .first()
    .waitFor()
  await expectLooksRight(page, 'findings of one session')
  // Last: a device that lies at the table closes every other place.
  await go('flatbread-hydration', 'tasting')
  await expectLooksRight(page, 'tasting')
  expect(troubles).toEqual([])
  await page.context().close()
})

/** Every kind of part that opens, with its charts drawn. */
async function openFindings(page: Page): Promise<void> {
  await page
    .getByText(/^Liking is best in between/)
    .first()
    .waitFor()
  for (const name of [
    ...[/^Carry on/, /^Which differ/, /^Each taster/, /^Also seen/, /^Trade-off/],
    ...[/^What it rests on/, /^Crispness/, /^How .* worked out$/],
  ])
    await page.getByRole('button', { name }).first().click()
  await page
    .getByRole('img', { name: /^74 %: mean/ })
    .first()
    .waitFor()
}
