import type { Page } from 'playwright-core'
import { afterEach, beforeEach, expect, inject, test } from 'vitest'
import { madeStep } from '../core/made-plan.ts'
import { madeLog } from '../core/session/made-events.ts'
import { draftKept } from './draft-kept.ts'
import { type Freezing, openFreezing } from './freezing.ts'
import { dayOf } from './made-day.ts'
import { readIn } from './read-in.ts'

const baseUrl = inject('baseUrl')
const minutes = 60_000
let phone: Freezing

beforeEach(async () => {
  phone = await openFreezing()
})
afterEach(() => phone.close())

/** Doughs that rest for half an hour: two of them since 25 minutes, the others since 10. */
function resting() {
  const now = Date.now()
  const clockStep = { earlySeconds: 600, lateSeconds: 600 }
  const whole = dayOf(
    {
      steps: [
        madeStep('rest', 'rest', {
          ...{ name: 'Rest', handsSeconds: 0, waitSeconds: 1800, ...clockStep },
        }),
        madeStep('bake', 'bake', { handsSeconds: 20, waitSeconds: 240, ...clockStep }),
      ],
    },
    now - 40 * minutes,
  )
  const { events, log } = madeLog()
  for (const [place, { id }] of (whole.sessions[0]?.batches ?? []).entries())
    log(
      { kind: 'step-started', stepId: 'rest', repeat: 1 },
      { about: { kind: 'batch', id }, at: now - (place < 2 ? 25 : 10) * minutes },
    )
  return { ...whole, events: events.map((event) => ({ ...event, trialId: whole.trial.id })) }
}

/** Runs in the page: while it is frozen a quarter of an hour goes by on both of its clocks; what it rings at once is counted. */
function watched() {
  const moved = () => Number(localStorage.getItem('moved') ?? 0)
  const [day, steady] = [Date.now, performance.now.bind(performance)]
  Date.now = () => day() + moved()
  performance.now = () => steady() + moved()
  document.addEventListener('freeze', () => {
    localStorage.setItem('moved', String(moved() + 15 * 60_000))
  })
  const start = OscillatorNode.prototype.start
  Object.assign(globalThis, { rungNow: 0 })
  OscillatorNode.prototype.start = function (at = 0) {
    // The lowest tone of the first stroke stands for a ring.
    if (this.frequency.value < 1000 && at - this.context.currentTime < 1)
      Object.assign(globalThis, { rungNow: Reflect.get(globalThis, 'rungNow') + 1 })
    start.call(this, at)
  }
}

const rungNow = (page: Page) => page.evaluate(() => Reflect.get(globalThis, 'rungNow') as number)
/** Around midnight its hour is told with its day. */
const toldOf = (page: Page) =>
  page.getByText(/Rest is over, due at ([A-Z][a-z]{2} )?\d\d:\d\d, while this page could not ring/)
const read = (page: Page) => page.getByRole('button', { name: 'Read', exact: true })

/** So many minutes late each, and as much more as the test took until now. */
function expectLate(lines: readonly string[], leastMinutes: number, started: number) {
  for (const line of lines) {
    const late = Number(/: told (\d+) min late\.$/.exec(line)?.[1])
    expect(late).toBeGreaterThanOrEqual(leastMinutes)
    expect(late).toBeLessThanOrEqual(leastMinutes + (Date.now() - started) / minutes + 0.5)
  }
}

test('a locked phone, its page frozen and then thrown away: at return one ring, what was missed and how late, none of it twice', async () => {
  const started = Date.now()
  const whole = resting()
  const troubles: string[] = []
  await phone.driven(async (page) => {
    page.on('pageerror', (error) => troubles.push(String(error)))
    await page.addInitScript(watched)
    await readIn(page, baseUrl, whole)
    await page.goto(`${baseUrl}#/trial/${whole.trial.id}/bench`)
    // The first press, after which a browser gives sound.
    await page.getByRole('region', { name: 'Now' }).getByRole('timer').first().click()
    await page.getByText(/rings when it is over/).waitFor({ state: 'attached' })
    expect(await toldOf(page).count()).toBe(0)
  })
  await phone.freeze()
  await phone.resume()
  const first = await phone.driven(async (page) => {
    page.on('pageerror', (error) => troubles.push(String(error)))
    await page.addInitScript(watched)
    expect(await page.evaluate(() => localStorage.getItem('moved'))).toBe(String(15 * minutes))
    await toldOf(page).first().waitFor()
    const told = await toldOf(page).allInnerTexts()
    await expect.poll(() => rungNow(page)).toBe(1)
    return told
  })
  expect(first).toHaveLength(2)
  // Due five minutes after the lock, of a quarter of an hour.
  expectLate(first, 10, started)
  // Not read yet, and away again.
  await phone.freeze()
  await phone.discard()
  const second = await phone.driven(async (page) => {
    page.on('pageerror', (error) => troubles.push(String(error)))
    await page.addInitScript(watched)
    await page.goto(`${baseUrl}#/trial/${whole.trial.id}/bench`)
    await expect.poll(() => toldOf(page).count()).toBe(4)
    const told = await toldOf(page).allInnerTexts()
    await read(page).click()
    await toldOf(page).first().waitFor({ state: 'detached' })
    // Read is what is kept as such.
    await draftKept(page, '')
    await page.reload()
    await page.getByRole('region', { name: 'Now' }).getByRole('timer').first().waitFor()
    expect(await toldOf(page).count()).toBe(0)
    return told
  })
  // What nobody has read stands as it was said; the others were due 20 min on, of half an hour.
  const others = second.filter((line) => !first.includes(line))
  expect(others).toHaveLength(2)
  expectLate(others, 10, started)
  expect(troubles).toEqual([])
})
