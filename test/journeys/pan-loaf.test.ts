import type { Page } from 'playwright-core'
import { afterEach, beforeEach, expect, inject, test } from 'vitest'
import { BenchHands, logOf } from './bench-hands.ts'
import {
  type Act,
  type Entry,
  type SheetLine,
  scriptOfSheet,
  toldByLog,
  wallSecond,
} from './day-script.ts'
import { type Freezing, openFreezing } from './freezing.ts'
import { makeClock, setClock, wakesAt } from './made-clock.ts'
import { onDay, panLoaf } from './pan-loaf.ts'
import { readIn } from './read-in.ts'
import { type SheetOnPaper, sheetOnPaper } from './sheet-on-paper.ts'
import { trialOnDisk } from './trial-on-disk.ts'
import { troublesOf } from './visit.ts'

const baseUrl = inject('baseUrl')
const zone = 'Europe/Zurich'
let phone: Freezing

beforeEach(async () => {
  phone = await openFreezing({ zone, width: 360, height: 640 })
})
afterEach(() => phone.close())

const now = (page: Page) => page.getByRole('region', { name: 'Now' })
const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true })

/** The first press of a page, after which a browser gives sound. */
const touched = async (page: Page) => {
  await now(page).getByRole('heading').first().click()
  await page.getByText(/rings when it is over/).waitFor({ state: 'attached' })
}

/** What stands in front, without the seconds. */
const inFront = async (hands: BenchHands) =>
  `${await hands.letter()} ${(await now(hands.page).innerText()).replaceAll(/\s+/g, ' ')}`

/** A pair of hands at this page that does what the script says at its very second, and what it did. */
function worker(page: Page, expected: Entry[]) {
  const hands = new BenchHands(page, (seconds) => page.waitForTimeout(seconds * 100))
  /** Of these presses, those that brought a dough to the front that did not stand there. */
  let tabs = 0
  const front = async (letter: string) => {
    for (let look = 0; look < 12; look += 1) {
      if ((await hands.letter()) === letter) return
      await page.waitForTimeout(50)
    }
    tabs += 1
    await hands.front(letter)
    await expect.poll(() => hands.letter()).toBe(letter)
  }
  const kept = (entries: readonly Entry[]) => {
    expected.push(...entries)
    // The lock that comes with the first mix is no entry of the script.
    return expect
      .poll(async () => (await logOf(page)).filter(({ kind }) => kind !== 'lock').length)
      .toBe(expected.length)
  }
  const does = async ({ at, letter, press, by, logs }: Act) => {
    await setClock(page, at)
    await front(letter)
    if (by)
      await now(page)
        .getByText(`Helper 1 does this: ${logs.at(-1)?.step}.`)
        .waitFor()
    await hands.press(press)
    await kept(logs.map((entry) => ({ ...entry, letter, at: wallSecond(at, zone) })))
  }
  const weighs = async (at: number, letter: string, grams: readonly number[]) => {
    await setClock(page, at)
    await front(letter)
    await hands.press('Weigh')
    for (const [turn, value] of grams.entries()) {
      const moment = at + turn * 20_000
      await setClock(page, moment)
      await hands.press(new RegExp(`^The scale shows .*${String(value).replace('.', '\\.')}`))
      await kept([{ kind: 'weighed', letter, at: wallSecond(moment, zone), value }])
    }
  }
  const reads = async (at: number, what: string, of: readonly string[], celsius: string) => {
    await setClock(page, at)
    if (of.length === 1) await front(of[0] ?? '')
    await hands.press(what)
    if (of.length > 1) await hands.press(`All ${of.length}`)
    await hands.type(celsius)
    await hands.press(`Keep ${celsius} °C`)
    await kept(
      of.map((letter) => ({
        ...{ kind: 'temperature', letter, at: wallSecond(at, zone), value: Number(celsius) },
      })),
    )
  }
  return { hands, front, does, weighs, reads, tabs: () => tabs }
}

/** Two pairs of hands are at work at once in the helper’s hour and at no other time, and the sheet names the helper’s work. */
function expectHelped({ lines }: SheetOnPaper) {
  const [from, until] = [onDay(4, 19, 30), onDay(4, 20, 30)]
  const end = (line: SheetLine) => line.at + line.handsSeconds * 1000
  const together = lines.filter((line) =>
    lines.some((other) => other !== line && other.at < end(line) && line.at < end(other)),
  )
  expect(together.length).toBeGreaterThan(0)
  for (const line of together) expect(line.at >= from && end(line) <= until).toBe(true)
  const ofHelper = lines.filter(({ by }) => by === 'helper 1')
  expect(ofHelper.length).toBeGreaterThan(0)
  for (const line of ofHelper) expect(together).toContain(line)
}

test('a pan loaf in three doughs over two days with a night in the fridge and a helper’s hour: five reloads and a locked phone lose nothing, and the log is the script entry for entry', async () => {
  const begun = performance.now()
  const expected: Entry[] = []
  const troubles: string[][] = []
  let presses = 0
  let tabs = 0
  let reloads = 0
  let script: Act[] = []
  let letters: string[] = []

  /** Reloads the page: the same stands in front, and its clock goes on. */
  const reloaded = async (page: Page, hands: BenchHands, at: number) => {
    await setClock(page, at)
    await page.waitForTimeout(300)
    const before = await inFront(hands)
    await page.reload()
    await now(page).waitFor()
    await expect.poll(() => inFront(hands)).toBe(before)
    await touched(page)
    hands.presses += 1
    reloads += 1
  }

  await phone.driven(async (page) => {
    troubles.push(troublesOf(page, baseUrl))
    await makeClock(page, onDay(4, 17, 30))
    const whole = panLoaf()
    await readIn(page, baseUrl, whole)
    expect(await page.evaluate(() => [innerWidth, innerHeight])).toEqual([360, 640])
    await page.goto(`${baseUrl}#/trial/${whole.trial.id}/plan/clock`)
    await press(page, 'Keep these times').click()
    await page.getByText('These times are kept').first().waitFor()
    const sheet = await sheetOnPaper(page, onDay(4, 0))
    await page.goto(`${baseUrl}#/trial/${whole.trial.id}/plan`)
    await press(page, 'Begin session 1').waitFor()
    await press(page, 'Begin session 1').click()
    await now(page).waitFor()
    expect(sheet.days).toEqual(['Friday, 4 December', 'Saturday, 5 December'])
    expect(sheet.helpers).toEqual(['Helper 1: Friday, 4 December, 19:30 to 20:30.'])
    expectHelped(sheet)
    const { sessions } = await trialOnDisk(page)
    const [session] = sessions
    if (!session) throw new Error('a session was begun')
    letters = session.dealt.doughOrder.map(
      (id) => session.batches.find((batch) => batch.id === id)?.letter ?? '',
    )
    script = scriptOfSheet(sheet.lines, (dough) => letters[dough - 1] ?? '', {
      ...{ dough: 1, from: 'Last rise', seconds: 120 },
    })
    /** As one press for all of them logs them: as the session lists them. */
    const listed = session.batches.map(({ letter }) => letter)
    const { hands, front, does, weighs, reads, tabs: turned } = worker(page, expected)
    const salt = new Map(
      session.batches.map(({ letter, levelId }) => [
        letter,
        Number(whole.plans[0]?.levels.find(({ id }) => id === levelId)?.value) * 4,
      ]),
    )
    for (const [place, letter] of letters.entries())
      await weighs(onDay(4, 17, 45 + place * 4), letter, [...[400, 246, salt.get(letter) ?? 0, 2]])
    for (const act of script.filter(({ at }) => at < onDay(5, 0))) {
      if (reloads === 0 && act.at > onDay(4, 18, 3)) await reloaded(page, hands, onDay(4, 18, 3))
      if (expected.every(({ kind }) => kind !== 'temperature') && act.at > onDay(4, 18, 29))
        await reads(onDay(4, 18, 29), 'Dough temperature', listed, '24.5')
      if (reloads === 1 && act.at > onDay(4, 18, 40)) await reloaded(page, hands, onDay(4, 18, 40))
      await does(act)
    }
    await setClock(page, onDay(4, 22))
    await front(letters[0] ?? '')
    await expect.poll(() => now(page).innerText()).toContain('until Sat 08:41')
    await reloaded(page, hands, onDay(5, 2))
    presses += hands.presses
    tabs += turned()
    await wakesAt(page, onDay(5, 8, 43))
  })
  await phone.freeze()
  await phone.resume()
  await phone.driven(async (page) => {
    troubles.push(troublesOf(page, baseUrl))
    await makeClock(page, onDay(4, 17, 30))
    const missed = page.getByText(/could not ring/)
    await missed.first().waitFor()
    expect((await missed.allInnerTexts()).map((line) => line.trim())).toEqual([
      `${letters[0]}: Night in the fridge is over, due at 08:41, while this page could not ring: told 2 min late.`,
    ])
    const { hands, does, reads, tabs: turned } = worker(page, expected)
    await hands.press('Read')
    for (const act of script.filter(({ at }) => at > onDay(5, 0))) {
      const pulls = act.logs.some(({ kind }) => kind === 'bake-out')
      if (reloads === 3 && act.at > onDay(5, 10, 20)) await reloaded(page, hands, onDay(5, 10, 20))
      if (pulls) await reads(act.at - 20_000, 'Core temperature', [act.letter], '95.5')
      await does(act)
      if (pulls && reloads === 4) await reloaded(page, hands, act.at + 5000)
    }
    await page.getByRole('heading', { name: 'All steps are done' }).waitFor()
    presses += hands.presses
    tabs += turned()
    const { events, sessions, plans } = await trialOnDisk(page)
    const [session] = sessions
    const [plan] = plans
    if (!session || !plan) throw new Error('the plan and its session')
    expect(toldByLog(events, session, plan)).toEqual(expected)
  })
  process.stdout.write(
    `3 doughs over two days, weighed and measured: ${presses} presses, ${tabs} of them to another dough, ${Math.round((performance.now() - begun) / 1000)} s\n`,
  )
  expect(reloads).toBe(5)
  expect(troubles.flat()).toEqual([])
}, 240_000)
