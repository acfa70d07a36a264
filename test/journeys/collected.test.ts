import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { readIn } from './read-in.ts'
import { tasterNames, tastingTrial, tellingOf } from './tasting-trial.ts'
import { faultsInBothLooks, openBrowser, overhangPixels, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
const whole = tastingTrial()
const telling = tellingOf(whole).filter((one) => !one.startsWith('"'))
let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first()

async function atTheTable(options: Parameters<typeof visit>[2], trial = whole) {
  const visited = await visit(browser, baseUrl, options)
  await readIn(visited.page, baseUrl, trial)
  await visited.page.goto(`${baseUrl}#/trial/${trial.trial.id}/tasting`)
  await visited.page.getByRole('heading', { level: 1, name: 'Who is tasting?' }).waitFor()
  return visited
}

test('eight tasters by one device: double taps at every seal, a reload, the way back, a pause; one taster takes 14 presses', async () => {
  const { page, troubles } = await atTheTable({
    viewport: { width: 360, height: 640 },
    hasTouch: true,
    isMobile: true,
  })
  expect(await faultsInBothLooks(page)).toEqual([])
  expect(await overhangPixels(page)).toBe(0)
  // Who is tasting comes first: the question and the first seats stand on the first screen, over everything else.
  const seat = await press(page, /^AN/).boundingBox()
  expect((seat?.y ?? 640) + (seat?.height ?? 0)).toBeLessThanOrEqual(640)
  for (const [at, name] of tasterNames.entries()) {
    let presses = 0
    const tap = async (what: string | RegExp, twice = false) => {
      presses += 1
      const button = press(page, what)
      await (twice ? button.dblclick() : button.click())
    }
    await tap(new RegExp(`^${name}`))
    await tap('I can eat this: begin')
    for (let serving = 0; serving < 4; serving += 1) {
      await page.getByText(`${serving + 1} of 4`).waitFor()
      expect(await page.locator('button[aria-pressed="true"]').count()).toBe(0)
      await tap(new RegExp(`^Liking: ${((at + serving) % 9) + 1}(,|$)`))
      await tap(/^Chew: 3/)
      if (at === 0 && serving === 1) {
        expect(await page.getByRole('link').count()).toBe(0)
        expect(await faultsInBothLooks(page)).toEqual([])
        expect(await overhangPixels(page)).toBe(0)
        // Laid down and taken up again, the phone turns: what was pressed stays, and all of it fits.
        await page.setViewportSize({ width: 640, height: 360 })
        await page.locator('button[aria-pressed="true"]').nth(1).waitFor()
        expect(await overhangPixels(page)).toBe(0)
        await page.setViewportSize({ width: 360, height: 640 })
        await page.goBack()
        await page.goForward()
        await page.reload()
        await page.locator('button[aria-pressed="true"]').nth(1).waitFor()
        const shown = await page.locator('body').innerHTML()
        expect(telling.filter((one) => shown.includes(one))).toEqual([])
      }
      await tap(/^Seal \d{3}$/, true)
    }
    await page.getByText('All your ballots are sealed.').waitFor()
    expect(presses).toBeLessThanOrEqual(14)
    await press(page, 'Hand the device on').click()
    await page.getByRole('heading', { level: 1, name: 'Who is tasting?' }).waitFor()
  }
  await page.getByText('Every ballot is in. The codes wait to be unsealed.').waitFor()
  expect(troubles).toEqual([])
  await page.context().close()
}, 300_000)

test('a pause page stands between two samples where the plan wants a rest; the order comes when all are scored', async () => {
  const rested = tastingTrial({
    atTable: { restSeconds: 45, asksUsual: true, ranking: { ties: true } },
  })
  const { page, troubles } = await atTheTable({ viewport: { width: 360, height: 640 } }, rested)
  await press(page, /^AN/).click()
  await press(page, 'I can eat this: begin').click()
  for (let serving = 0; serving < 4; serving += 1) {
    await press(page, /^Liking: 6/).click()
    await press(page, /^Chew: 3/).click()
    await press(page, /^Seal \d{3}$/).click()
    if (serving === 3) break
    await page.getByText(/^Rest for \d+ seconds more\.$/).waitFor()
    await page.getByText('A sip of water, a bite of plain bread.').waitFor()
    expect(await page.getByRole('button').allInnerTexts()).toHaveLength(1)
    await press(page, /^\d{3}: I have it$/).click()
  }
  await page.getByRole('heading', { level: 1, name: 'In what order?' }).waitFor()
  expect(await faultsInBothLooks(page)).toEqual([])
  await page.evaluate(() => document.documentElement.style.setProperty('font-size', '200%'))
  expect(await overhangPixels(page)).toBe(0)
  await page.evaluate(() => document.documentElement.style.removeProperty('font-size'))
  const samples = page.getByRole('button', { name: /^\d{3}: no place yet$/ })
  for (let left = 4; left > 0; left -= 1) {
    await samples.first().click()
    await expect.poll(() => samples.count()).toBe(left - 1)
  }
  await press(page, 'Seal this order').dblclick()
  await page.getByRole('heading', { level: 1, name: 'Which was the usual one?' }).waitFor()
  await press(page, 'No idea').click()
  await page.getByText('All your ballots are sealed.').waitFor()
  expect(troubles).toEqual([])
  await page.context().close()
})

test('a sheet typed from paper twice: the mistyped score and the mistyped order are found, who typed is kept, when it was written is not invented', async () => {
  const ranked = tastingTrial({ atTable: { ranking: { ties: false } } })
  const { page, troubles } = await atTheTable({ viewport: { width: 1280, height: 900 } }, ranked)
  await press(page, /Type in from paper/).click()
  await press(page, 'Type in BO').click()
  const first = page.getByRole('textbox', { name: /Liking$/ }).first()
  const order = page.getByLabel('The order, first to last', { exact: true })
  await page.getByLabel('Typed by').fill('host')
  await first.focus()
  await page.keyboard.type('63735393')
  const [a, b, c, d] = await page.locator('tbody th b').allInnerTexts()
  await order.fill(`${a} ${b} ${c} ${d}`)
  await press(page, 'Again, by another hand').click()
  await page.getByLabel('Typed again by').fill('CY')
  await first.focus()
  await page.keyboard.type('63735363')
  await order.fill(`${b} ${a} ${c} ${d}`)
  await page.getByText('2 answers differ.').waitFor()
  await press(page, 'Seal BO’s sheet').click()
  await page.getByText('Settle what differs first.').waitFor()
  await page.getByLabel(/Liking, as the sheet says$/).fill('6')
  await page.getByText('One answer differs.').waitFor()
  await page.getByLabel('The order, first to last, as the sheet says').fill(`${b} ${a} ${c}`)
  await press(page, 'So says the sheet').click()
  await page.getByText(`The order still lacks ${d}.`).waitFor()
  expect(await faultsInBothLooks(page)).toEqual([])
  await page
    .getByLabel('The order, first to last, as the sheet says')
    .fill(`${b}, ${a}, ${c}, ${d}`)
  await press(page, 'So says the sheet').click()
  await page.getByText('One answer differs.').waitFor({ state: 'detached' })
  expect(await faultsInBothLooks(page)).toEqual([])
  await press(page, 'Seal BO’s sheet').click()
  await page.getByRole('row', { name: /BO/ }).getByText('5 / 5').waitFor()
  const kept = await page.evaluate(
    async (name) =>
      new Promise<
        {
          tasterId: string
          startedAt?: number
          cameBy?: unknown
          answers: { value: number }[]
          ranked?: string[][]
        }[]
      >((done) => {
        const asked = indexedDB.open(name)
        asked.onsuccess = () => {
          const all = asked.result.transaction('ballots').objectStore('ballots').getAll()
          all.onsuccess = () => done(all.result)
        }
      }),
    'evenhand',
  )
  expect(kept).toHaveLength(5)
  expect(kept.find(({ ranked }) => ranked)?.ranked).toEqual([[b], [a], [c], [d]])
  for (const ballot of kept) {
    expect(ballot.startedAt).toBeUndefined()
    expect(ballot.cameBy).toEqual({ way: 'paper', typedBy: 'host', typedAgainBy: 'CY' })
  }
  const liked = kept.flatMap(({ answers }) => answers[0]?.value ?? [])
  expect(liked.toSorted()).toEqual([5, 6, 6, 7])
  expect(troubles).toEqual([])
  await page.context().close()
})
