import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import type { StepKind } from '@/core/trial/step.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { madeStep } from '../core/made-plan.ts'
import { BenchHands, logOf } from './bench-hands.ts'
import { dayOf } from './made-day.ts'
import { readIn } from './read-in.ts'
import { openBrowser, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
const begun = Date.UTC(2026, 10, 21, 6)
const phone = { width: 360, height: 640 }
let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

async function benchOf(whole: WholeTrial) {
  const { page, troubles } = await visit(browser, baseUrl, {
    ...{ viewport: phone, hasTouch: true, isMobile: true },
    timezoneId: 'Europe/Zurich',
  })
  await page.clock.install({ time: begun + 60_000 })
  await page.clock.resume()
  await readIn(page, baseUrl, whole)
  await page.goto(`${baseUrl}#/trial/${whole.trial.id}/bench`)
  await page.getByRole('region', { name: 'Now' }).waitFor()
  return { page, troubles, hands: new BenchHands(page, (s) => page.clock.fastForward(s * 1000)) }
}

const mainPress = async (page: Page) =>
  (await page.getByRole('region', { name: 'Main press' }).getByRole('button').first().innerText())
    .replaceAll(/\s+/g, ' ')
    .trim()

/** Works the day the normal way until all steps are done: what stands in front, by its main press, when it is due. */
async function work(
  hands: BenchHands,
  /** Of all doughs, as they are listed. */
  letters: readonly string[],
  { between = async () => undefined }: { between?: (turn: number) => Promise<unknown> } = {},
): Promise<void> {
  const { page } = hands
  for (let turn = 0; turn < 900; turn += 1) {
    await between(turn)
    if ((await page.getByRole('heading', { name: 'All steps are done' }).count()) > 0) return
    await page.getByRole('region', { name: 'Now' }).waitFor()
    if (await hands.shows('Read')) {
      await hands.pressed('Read', 15_000)
      continue
    }
    if (await hands.shows('Weigh')) {
      const letter = await hands.letter()
      await hands.press('Weigh')
      while (await hands.shows(/^The scale shows/)) {
        // With the last weight kept, the press may have gone while the hand came.
        if (!(await hands.pressed(/^The scale shows/, 15_000))) continue
        hands.expected.push({ kind: 'weighed', letter })
        await page.clock.fastForward(900)
        await page.waitForTimeout(150)
      }
      continue
    }
    const letter = await hands.letter()
    const title = await hands.title()
    const now = (await page.getByRole('region', { name: 'Now' }).innerText()).replaceAll(
      /\s+/g,
      ' ',
    )
    // One reading for all tubs, once the last dough is mixed.
    const weighed = new Set(hands.expected.map((one) => one.letter))
    const measures = title === 'Mix' && now.includes('Hands on') && weighed.size === letters.length
    if (measures && (await hands.shows('Dough temperature'))) {
      await hands.press('Dough temperature')
      await hands.press(`All ${letters.length}`)
      await hands.type('24.5')
      await hands.press(/^Keep 24.5 °C/)
      for (const one of letters)
        hands.expected.push({ kind: 'temperature', letter: one, value: 24.5 })
      await page.waitForTimeout(150)
      continue
    }
    const words = await mainPress(page)
    const restsOf = /Rest after (.*?)(?: Hands| \d|,|$)/.exec(now)?.[1]
    if (
      /^(Rest over|Done|Launch .* ends)/.test(words) &&
      now.includes('until ') &&
      !(await over(page))
    ) {
      await hands.wait(60)
      continue
    }
    if (now.includes('To begin') && / in \d+ /.test(now) && now.includes(', at ')) {
      await hands.wait(60)
      continue
    }
    if (words.startsWith('Pull') && !(await over(page))) {
      await hands.wait(20)
      continue
    }
    const step = restsOf?.trim() ?? title
    if (/^(Done|Hands off)/.test(words) && now.includes('Hands on')) await hands.wait(100)
    const begins = / and (.*) begins$/.exec(words)?.[1]
    // What stands in front moves with the clock: what has changed since it was read is read anew.
    const still = async () =>
      (await mainPress(page)) === words &&
      (await hands.letter()) === letter &&
      (await hands.title()) === title
    const press = new RegExp(`^${words.split(' ').slice(0, 2).join(' ')}`)
    if (!(await hands.pressed(press, 3000, still))) continue
    if (words === 'Begin') hands.expected.push({ kind: 'step-started', letter, step })
    else if (words === 'Hands off') hands.expected.push({ kind: 'hands-off', letter, step })
    else if (words.startsWith('Pull')) hands.expected.push({ kind: 'bake-out', letter })
    else if (words.startsWith('Launch')) {
      if (words.includes(' ends ')) hands.expected.push({ kind: 'step-stopped', letter, step })
      hands.expected.push({ kind: 'bake-in', letter })
    } else {
      hands.expected.push({ kind: 'step-stopped', letter, step })
      if (begins) hands.expected.push({ kind: 'step-started', letter, step: begins })
    }
    await page.clock.fastForward(900)
    await page.waitForTimeout(150)
  }
  throw new Error(`the day did not end: ${await page.getByRole('main').innerText()}`)
}

/** The presses on the screen, above the swipe, that are lower than a floury thumb needs: 64 px. */
const tooLow = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll('main button, nav[aria-label^="Doughs"] button')].flatMap(
      (press) => {
        const { top, height } = press.getBoundingClientRect()
        return height > 0 && height < 63.5 && top >= 0 && top < innerHeight
          ? [`${press.textContent}: ${height} px`]
          : []
      },
    ),
  )

/** Whether the clock in front has run down. */
const over = async (page: Page) =>
  /^(00:00|\+)/.test((await page.getByRole('timer').first().innerText()).trim())

/** What the log on disk says, in the words of the script. */
async function told(page: Page, whole: WholeTrial) {
  const [session] = whole.sessions
  const [plan] = whole.plans
  if (!session || !plan) throw new Error('the day has a plan and a session')
  const letters = new Map(session.batches.map(({ id, letter }) => [id, letter]))
  for (const { id, levelId } of session.pieces)
    letters.set(id, session.dealt.letters.find((one) => one.levelId === levelId)?.letter ?? '')
  return (await logOf(page))
    .filter(({ kind }) => kind !== 'lock')
    .map((event) => {
      const step = plan.steps.find(({ id }) => id === event.stepId)
      const name =
        step && step.kind !== 'bake'
          ? step.repeats > 1
            ? `${step.name} ${event.repeat} of ${step.repeats}`
            : step.name
          : undefined
      return {
        kind: event.kind,
        letter: letters.get((event.about as { id: string }).id) ?? '',
        ...(name ? { step: name } : {}),
        ...(typeof event.celsius === 'number' ? { value: event.celsius } : {}),
      }
    })
}

const clockStep = { earlySeconds: 600, lateSeconds: 3600 }
/** Two days by hand take minutes, more where the machine is busy elsewhere. */
const twoDays = 300_000

test(
  'four flatbreads of ten steps with a night in the fridge: five reloads and a phone asleep lose nothing, what was missed is said, and a hundred presses do',
  async () => {
    const byHand = (id: string, kind: StepKind, name: string, handsSeconds: number) =>
      madeStep(id, kind, { name, handsSeconds, ...clockStep })
    const wait = (id: string, kind: StepKind, name: string, waitSeconds: number) =>
      madeStep(id, kind, { name, handsSeconds: 0, waitSeconds, ...clockStep })
    const whole = dayOf(
      {
        serving: 'as-baked',
        placesPerLoad: 1,
        steps: [
          byHand('mix', 'mix', 'Mix', 240),
          wait('rest', 'rest', 'Rest', 1800),
          byHand('fold', 'fold', 'Fold', 60),
          wait('night', 'cold-proof', 'Night in the fridge', 12 * 3600),
          byHand('ball', 'ball', 'Ball', 60),
          wait('proof', 'proof', 'Proof', 3600),
          ...[
            byHand('open', 'open', 'Open', 40),
            byHand('top', 'top', 'Top', 30),
            madeStep('bake', 'bake', {
              ...{ name: 'Bake', handsSeconds: 20, waitSeconds: 240, lateSeconds: 30 },
              uses: ['hands', 'oven'],
            }),
            byHand('serve', 'serve', 'Serve', 20),
          ].map((step) => ({ ...step, per: 'piece' as const })),
        ],
      },
      begun,
    )
    const { page, troubles, hands } = await benchOf(whole)
    let reloads = 0
    let slept = false
    let missed = ''
    const low = new Set<string>()
    await work(hands, whole.sessions[0]?.batches.map(({ letter }) => letter) ?? [], {
      between: async (turn) => {
        if (turn % 10 === 0) for (const press of await tooLow(page)) low.add(press)
        if (turn > 0 && turn % 25 === 0 && reloads < 5) {
          reloads += 1
          await page.reload()
          await page.getByRole('region', { name: 'Now' }).waitFor()
        }
        const now = await page.getByRole('main').innerText()
        if (!slept && now.includes('Night in the fridge') && now.includes('until ')) {
          const doughs = hands.expected.filter(({ step }) => step === 'Night in the fridge').length
          if (doughs < (whole.sessions[0]?.batches.length ?? 0)) return
          slept = true
          // Asleep over night: the page does not run, then its clock is eleven hours and a half and more on.
          await page.clock.fastForward(12.2 * 3600_000)
          const said = page
            .getByText(/Night in the fridge is over, due at .* could not ring/)
            .first()
          await said.waitFor()
          missed = await said.innerText()
          await hands.button('Read').click()
        }
      },
    })
    process.stdout.write(`4 doughs x 10 steps, weighed and measured: ${hands.presses} presses\n`)
    expect([...low]).toEqual([])
    expect(reloads).toBe(5)
    expect(missed).toMatch(/Night in the fridge is over, due at/)
    expect(await told(page, whole)).toEqual(hands.expected)
    expect(hands.presses).toBeLessThanOrEqual(100)
    expect(troubles).toEqual([])
    await page.context().close()
  },
  twoDays,
)
