import { execFileSync } from 'node:child_process'
import type { Page } from 'playwright-core'
import { expect, inject } from 'vitest'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { planOf } from '../trial-of/plan-of.ts'
import { sessionOf } from '../trial-of/session-of.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'

const baseUrl = inject('baseUrl')

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

/** The trial of these journeys. */
export const whole = toTaste()
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

export function expectNothingTold(text: string, where: string): void {
  expect(
    telling.filter((one) => text.includes(one)),
    where,
  ).toEqual([])
}

export function expectNoLetter(text: string, where: string): void {
  const words = text.split(/[^\p{Letter}\p{Number}]+/u)
  expect(
    letters.filter((letter) => words.includes(letter)),
    where,
  ).toEqual([])
}

/** The words a person sees on the page as it stands, on screen or (with print emulated) on paper. */
export const shownText = async (page: Page) =>
  (await page.locator('body').allInnerTexts()).join('\n')

export function pdfText(pdf: Buffer): string | null {
  try {
    return execFileSync('pdftotext', ['-', '-'], { input: pdf, encoding: 'utf8' })
  } catch (failure) {
    if (failure instanceof Error && 'code' in failure && failure.code === 'ENOENT') return null
    throw failure
  }
}

/** The page in every way it can be read: its elements with their attributes, its words, its title, and on paper. */
export async function expectCovered(page: Page, where: string): Promise<void> {
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

/** The first taster's first ballot. */
export async function sealOne(page: Page): Promise<void> {
  await page.goto(`${baseUrl}#/trial/${whole.trial.id}/tasting`)
  await heading(page, 'Who is tasting?').waitFor()
  await page
    .getByRole('button', { name: /not begun/ })
    .first()
    .click()
  await page.getByText('Contains cereals with gluten and milk.').waitFor()
  await page.getByRole('button', { name: 'I can eat this: begin' }).click()
  await page.getByRole('button', { name: 'Liking: 7' }).click()
  await page.getByRole('button', { name: 'Chew: 3, just about right' }).click()
  await page.getByRole('button', { name: /^Seal \d{3}$/ }).click()
  await page.getByText('2 of 2').waitFor()
  await lookAgain(page)
}

/** Opens the ballot that was sealed, with its answers, and leaves it as it is: the next code stands there again. */
async function lookAgain(page: Page): Promise<void> {
  await page.getByRole('button', { name: /^Change \d{3}$/ }).click()
  await page.getByText('what is sealed now takes its place').waitFor()
  await page.getByRole('button', { name: 'Liking: 7', pressed: true }).waitFor()
  await page.getByRole('button', { name: 'Leave it as it is' }).click()
  await page.getByText('2 of 2').waitFor()
}

/** Every other way is closed while the device lies at the table: a typed address, another tab, the browser's way back. */
export async function expectClosed(page: Page): Promise<void> {
  for (const address of ['', 'kitchen', `trial/${whole.trial.id}/bench`]) {
    await page.goto(`${baseUrl}#/${address}`)
    await heading(page, 'This device lies at the table').waitFor()
    await expectCovered(page, `#/${address}, at the table`)
  }
}

/** Leaves an unfinished ballot by the two presses it takes. */
export async function handOn(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Leave', exact: true }).click()
  await page.getByRole('button', { name: 'Hand on', exact: true }).click()
  await heading(page, 'Who is tasting?').waitFor()
}

export async function takeDevice(page: Page, how: string): Promise<void> {
  await page.getByRole('button', { name: 'Take the device from the table' }).click()
  await page.getByRole('button', { name: how }).click()
}

export const heading = (page: Page, name: string) => page.getByRole('heading', { level: 1, name })
