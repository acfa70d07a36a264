import { execFileSync } from 'node:child_process'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { planOf } from '../trial-of/plan-of.ts'
import { sessionOf } from '../trial-of/session-of.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'
import { readIn } from './read-in.ts'
import { accessibilityFaults, openBrowser, overhangPixels, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

/** A dealt session nobody has tasted from, its levels such as no scale prints, one of them in the question itself. */
function toTaste(): WholeTrial {
  const whole = wholeTrialOf()
  const plan = planOf()
  return {
    ...whole,
    trial: { ...whole.trial, planId: plan.id },
    plans: [
      {
        ...plan,
        question: 'Is 71.7 really better than 66.4?',
        levels: [
          { id: 'level-1', value: 66.4, label: '66.4', control: true },
          { id: 'level-2', value: 71.7, label: '71.7', control: false },
        ],
      },
    ],
    sessions: [sessionOf()],
    events: [],
    ballots: [],
    photos: [],
  }
}

const whole = toTaste()
const [plan] = whole.plans
const [session] = whole.sessions
if (!plan || !session) throw new Error('the trial has a plan and a session')

/** Every text that would tell: levels, weights of the formula to the step of the scale, and their ingredients' targets. */
const telling = [
  '66.4',
  '71.7',
  ...weighSheet(plan, whole.kitchen).batches.flatMap(({ lines }) =>
    lines.flatMap(({ grams, targetGrams }) => [
      `${grams.toFixed(1)} g`,
      `${grams.toFixed(2)} g`,
      targetGrams.toFixed(2),
    ]),
  ),
]
const letters = session.batches.map(({ letter }) => letter)

function expectNothingTold(text: string, where: string): void {
  expect(
    telling.filter((one) => text.includes(one)),
    where,
  ).toEqual([])
}

function expectNoLetter(text: string, where: string): void {
  const words = text.split(/[^\p{Letter}\p{Number}]+/u)
  expect(
    letters.filter((letter) => words.includes(letter)),
    where,
  ).toEqual([])
}

/** The words a person sees on the page as it stands, on screen or (with print emulated) on paper. */
const shownText = async (page: Page) => (await page.locator('body').allInnerTexts()).join('\n')

function pdfText(pdf: Buffer): string | null {
  try {
    return execFileSync('pdftotext', ['-', '-'], { input: pdf, encoding: 'utf8' })
  } catch (failure) {
    if (failure instanceof Error && 'code' in failure && failure.code === 'ENOENT') return null
    throw failure
  }
}

/** The page in every way it can be read: its elements with their attributes, its words, its title, and on paper. */
async function expectCovered(page: Page, where: string): Promise<void> {
  expectNothingTold(await page.locator('body').innerHTML(), where)
  const words = await shownText(page)
  expectNoLetter(words, where)
  expectNothingTold(await page.title(), where)
  await page.emulateMedia({ media: 'print' })
  expectNothingTold(await shownText(page), `${where}, printed`)
  await page.emulateMedia({ media: null })
  const printed = pdfText(await page.pdf({ format: 'A4' }))
  if (printed !== null) {
    expectNothingTold(printed, `${where}, as PDF`)
    expectNoLetter(printed, `${where}, as PDF`)
  }
}

async function sealOne(page: Page): Promise<void> {
  await page.goto(`${baseUrl}#/trial/${whole.trial.id}/tasting`)
  await page.getByRole('button', { name: 'Everyone was asked' }).click()
  await page.getByText('Who is tasting now?').waitFor()
  await page
    .getByRole('button', { name: /not begun/ })
    .first()
    .click()
  await page.getByRole('button', { name: 'Liking: 7' }).click()
  await page.getByRole('button', { name: 'Chew: 3, just about right' }).click()
  await page.getByRole('button', { name: /^Seal \d{3}$/ }).click()
  await page.getByText('2 of 2').waitFor()
  await lookAgain(page)
}

/** Opens the ballot that was sealed, with its answers, and leaves it as it is: the next code stands there again. */
async function lookAgain(page: Page): Promise<void> {
  await page.getByText('Change a sealed ballot of mine').click()
  await page.getByRole('button', { name: /^\d{3}$/ }).click()
  await page.getByText('what is sealed now takes its place').waitFor()
  await page.getByRole('button', { name: 'Liking: 7', pressed: true }).waitFor()
  await page.getByRole('button', { name: 'Leave it as it is' }).click()
  await page.getByText('2 of 2').waitFor()
}

const heading = (page: Page, name: string) => page.getByRole('heading', { level: 1, name })

test('while a tasting is sealed nothing gives a level, letter or weight away: no place, title, history entry, print or file name', async () => {
  const { page, troubles } = await visit(browser, baseUrl)
  await readIn(page, baseUrl, whole)
  await sealOne(page)
  await expectCovered(page, 'at the table')
  await page.getByRole('button', { name: 'Hand on' }).click()
  await heading(page, 'Tasting').waitFor()
  await expectCovered(page, 'tasting')
  const fresh = await page.context().newPage()
  for (const title of ['Plan', 'Bench', 'Findings', 'Report']) {
    await fresh.goto(`${baseUrl}#/trial/${whole.trial.id}/${title.toLowerCase()}`)
    await heading(fresh, title).waitFor()
    await fresh.getByText('The tasting is sealed.').waitFor()
    expect(await accessibilityFaults(fresh), title).toEqual([])
    await expectCovered(fresh, title)
  }
  for (const [address, name] of [
    ['#/', 'Notebook'],
    ['#/kitchen', 'Kitchen'],
    ['#/about', 'About Evenhand'],
  ] as const) {
    await fresh.goto(`${baseUrl}${address}`)
    await heading(fresh, name).waitFor()
    if (name === 'Notebook') await fresh.getByText('levels under cover').waitFor()
    await expectCovered(fresh, name)
  }
  const console = await fresh.context().newCDPSession(fresh)
  const { entries } = await console.send('Page.getNavigationHistory')
  expect(entries.length).toBeGreaterThan(6)
  for (const entry of entries) expectNothingTold(`${entry.url} ${entry.title}`, 'history')

  await fresh.goto(baseUrl)
  const [download] = await Promise.all([
    fresh.waitForEvent('download'),
    fresh.getByRole('button', { name: /^Export/ }).click(),
  ])
  expectNothingTold(download.suggestedFilename(), 'file name')
  expect(download.suggestedFilename()).not.toMatch(/66|71/)
  expect(troubles).toEqual([])
  await page.context().close()
})

test('blank ballots print codes and questions for every taster, on A4 and Letter, and nothing of a level', async () => {
  const { page, troubles } = await visit(browser, baseUrl)
  await readIn(page, baseUrl, whole)
  await page.goto(`${baseUrl}#/trial/${whole.trial.id}/tasting`)
  await page.evaluate(() => {
    window.print = () => undefined
  })
  await page.getByRole('button', { name: 'Print blank ballots' }).click()
  await page.emulateMedia({ media: 'print' })
  await page.getByRole('heading', { level: 2, name: '905' }).first().waitFor()
  const words = await shownText(page)
  for (const code of ['472', '905']) expect(words).toContain(code)
  expect(words).toContain('Liking')
  expect(words).not.toContain('Who is tasting now?')
  expectNothingTold(words, 'ballots')
  expectNoLetter(words, 'ballots')
  for (const format of ['A4', 'Letter']) {
    const printed = pdfText(await page.pdf({ format }))
    if (printed !== null) expectNothingTold(printed, format)
  }
  expect(troubles).toEqual([])
  await page.context().close()
})

test('a baker who does not taste lifts the cover by one confirmed press: it is logged once, and back when a taster sits down or the page is loaded again', async () => {
  const { page, troubles } = await visit(browser, baseUrl, {
    viewport: { width: 360, height: 800 },
  })
  await readIn(page, baseUrl, whole)
  await sealOne(page)
  await page.goto(`${baseUrl}#/trial/${whole.trial.id}/bench`)
  await page.getByRole('button', { name: 'I bake and do not taste: uncover for me' }).click()
  await page.getByRole('button', { name: 'Uncover', exact: true }).click()
  await page.getByText('71.7').first().waitFor()
  await page.getByText('Looked behind the codes: bakes and does not taste (Bench)').waitFor()
  expect(await overhangPixels(page)).toBe(0)
  await page.getByRole('link', { name: 'Tasting', exact: true }).click()
  await page.getByText('Plan and Bench are uncovered on this device').waitFor()
  await expectCovered(page, 'tasting while its baker may look')
  await page.getByRole('link', { name: 'Bench', exact: true }).click()
  await page.getByText('71.7').first().waitFor()
  expect(await page.getByText(/^Looked behind the codes/).count()).toBe(1)
  await page.getByRole('link', { name: 'Tasting', exact: true }).click()
  await page
    .getByRole('button', { name: /not begun|of 2 sealed/ })
    .first()
    .click()
  await page.getByRole('link', { name: 'Bench', exact: true }).click()
  await page.getByText('The tasting is sealed.').waitFor()
  await expectCovered(page, 'bench once a taster had the device')
  await page.reload()
  await page.getByText('The tasting is sealed.').waitFor()
  await expectCovered(page, 'bench after a reload')
  await page.goto(`${baseUrl}#/trial/${whole.trial.id}/findings`)
  await page.getByText('The tasting is sealed.').waitFor()
  expect(await page.getByRole('button', { name: /uncover/ }).count()).toBe(0)
  expect(troubles).toEqual([])
  await page.context().close()
})
