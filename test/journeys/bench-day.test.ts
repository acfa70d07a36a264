import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { madePlan, madeStep } from '../core/made-plan.ts'
import { madeSession } from '../core/session/made-session.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'
import { BenchHands, logOf } from './bench-hands.ts'
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

/** A session dealt a moment ago of a plan as changed, with nobody asked to taste: the day is what is tried. */
function dayOf(change: Partial<Plan>): WholeTrial {
  const plan = madePlan({
    ...{ tasters: [], flights: 1, warmUpPiece: false, responses: [], mainResponseId: null },
    ...{ at: begun - 3600_000, ...change },
  })
  const session = { ...madeSession(plan), createdAt: begun, trialId: plan.trialId }
  const { trial } = wholeTrialOf()
  return {
    ...{ plans: [plan], sessions: [session], events: [], ballots: [], photos: [], kitchen: [] },
    trial: { ...trial, id: plan.trialId, planId: plan.id, createdAt: begun - 3600_000 },
  }
}

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
  { between = async () => undefined }: { between?: (turn: number) => Promise<unknown> } = {},
): Promise<void> {
  const { page } = hands
  for (let turn = 0; turn < 900; turn += 1) {
    await between(turn)
    if ((await page.getByRole('heading', { name: 'All steps are done' }).count()) > 0) return
    await page.getByRole('region', { name: 'Now' }).waitFor()
    if (await hands.shows('Weigh')) {
      const letter = await hands.letter()
      await hands.press('Weigh')
      while (await hands.shows(/^The scale shows/)) {
        await hands.press(/^The scale shows/)
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
    if ((await hands.shows('Dough temperature')) && !now.includes('To begin')) {
      await hands.press('Dough temperature')
      await hands.type('24.5')
      await hands.press('Keep 24.5 °C')
      hands.expected.push({ kind: 'temperature', letter, value: 24.5 })
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
    await hands.press(new RegExp(`^${words.split(' ').slice(0, 2).join(' ')}`))
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
  'a pan loaf of two days with a night in the fridge: five reloads and a phone asleep lose nothing, and what was missed is said',
  async () => {
    const whole = dayOf({
      serving: 'rested',
      placesPerLoad: 4,
      steps: [
        madeStep('mix', 'mix', { name: 'Mix', handsSeconds: 120, ...clockStep }),
        madeStep('bulk', 'rest', {
          name: 'Bulk',
          handsSeconds: 0,
          waitSeconds: 5400,
          ...clockStep,
        }),
        madeStep('pan', 'ball', { name: 'Into the pan', handsSeconds: 60, ...clockStep }),
        madeStep('night', 'cold-proof', {
          ...{ name: 'Night in the fridge', handsSeconds: 0, waitSeconds: 12 * 3600, ...clockStep },
        }),
        madeStep('bake', 'bake', {
          name: 'Bake',
          handsSeconds: 20,
          waitSeconds: 2400,
          ...clockStep,
        }),
      ],
    })
    const { page, troubles, hands } = await benchOf(whole)
    let reloads = 0
    let slept = false
    let missed = ''
    await work(hands, {
      between: async (turn) => {
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
    expect(reloads).toBe(5)
    expect(missed).toMatch(/Night in the fridge is over, due at/)
    expect(await told(page, whole)).toEqual(hands.expected)
    expect(troubles).toEqual([])
    await page.context().close()
  },
  twoDays,
)
