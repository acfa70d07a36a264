import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { newTrial as beginTrial } from './new-trial.ts'
import { openBrowser, overhangPixels, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

async function newTrial(page: Page): Promise<void> {
  await page.goto(baseUrl)
  await beginTrial(page)
  await page.getByRole('heading', { level: 1, name: 'Plan' }).waitFor()
  await page.locator('#plan-fairness li').first().waitFor()
}

test.each([360, 1280])(
  'a new plan at %i px fits, and a folded part says what stands in it',
  async (width) => {
    const { page, troubles } = await visit(browser, baseUrl, { viewport: { width, height: 800 } })
    await newTrial(page)
    expect(await overhangPixels(page)).toBe(0)
    // All is open here; shut again, every part is one row away from what it says.
    for (const title of ['Kitchen', 'Sessions', 'Formula']) {
      const row = page.getByRole('button', { name: new RegExp(`^${title} `) }).first()
      await row.click()
      await expect.poll(() => row.getAttribute('aria-expanded')).toBe('false')
      expect((await row.innerText()).length).toBeGreaterThan(title.length + 2)
    }
    expect(troubles).toEqual([])
    await page.context().close()
  },
)

test('a newcomer turns the plan to salt, adds two tasters, writes the bet down and begins the session', async () => {
  const { page, troubles } = await visit(browser, baseUrl)
  await newTrial(page)
  await page.getByLabel('Kind', { exact: true }).selectOption('salt')
  expect(await page.getByLabel('Question', { exact: true }).inputValue()).toBe(
    'How much salt does our country loaf need?',
  )
  // One step of 0.4 either side of the 2 % that the plan has.
  expect(await page.getByLabel('Level 1', { exact: true }).inputValue()).toBe('1.6')
  await page.getByLabel('It is best somewhere in between').click()
  for (const initials of ['KL', 'MB']) {
    await page.getByLabel('New taster').fill(initials)
    await page.getByRole('button', { name: 'Add taster' }).click()
  }
  await page.getByRole('button', { name: 'Begin session 1' }).click()
  await page.waitForURL(/bench$/)
  expect(troubles).toEqual([])
  await page.context().close()
})

test('each way to start is on an untouched plan, and each is taken back by undo', async () => {
  const { page, troubles } = await visit(browser, baseUrl)
  await newTrial(page)
  await newTrial(page)
  const question = page.getByLabel('Question', { exact: true })
  const salt = page.getByRole('button', { name: 'Salt, percent of flour: 2', exact: true })
  const undo = async () => {
    await page.getByRole('button', { name: 'Undo' }).click()
    await salt.waitFor()
  }

  await page.getByRole('button', { name: 'an empty page' }).click()
  await expect.poll(() => question.inputValue()).toBe('')
  await undo()
  await expect.poll(() => question.inputValue()).toBe('How wet should our country loaf be?')

  await page.getByRole('button', { name: 'a pasted formula' }).click()
  await page
    .getByLabel('The formula as you have it')
    .fill('500 g bread flour\n400 g water\n10 g salt')
  await page.getByRole('button', { name: 'Use this formula' }).click()
  await page.getByText('Formula replaced').waitFor()
  await undo()

  await page.getByRole('button', { name: 'a sample', exact: true }).click()
  await page.getByRole('button', { name: /^Use its plan: .*focaccia/ }).click()
  await expect.poll(() => question.inputValue()).toContain('focaccia')
  await undo()

  await page.getByRole('button', { name: 'an earlier trial', exact: true }).click()
  await page.getByRole('button', { name: /^Use its plan: / }).click()
  await page.getByText('Started from another plan').waitFor()
  await undo()
  expect(troubles).toEqual([])
  await page.context().close()
})

test('every remedy of the fairness check changes the plan by its press, and undo takes it back', async () => {
  const { page, troubles } = await visit(browser, baseUrl)
  await newTrial(page)
  const list = page.locator('#plan-fairness')
  const presses = list.locator('button:not([aria-expanded])')
  /** What the presses of all items say, each row and the fold below them opened. */
  const remedies = async () => {
    await list.evaluate(async (section) => {
      const shut =
        'h3 > button[aria-expanded="false"], ul[aria-label] > li > div > button[aria-expanded="false"]'
      for (const each of section.querySelectorAll<HTMLElement>(shut)) each.click()
      await new Promise((drawn) => requestAnimationFrame(drawn))
    })
    const said = await presses.allTextContents()
    const others = /^(Show where|Why|Accept|What helps|Checked|How)/
    return [...new Set(said)]
      .filter((text) => !others.test(text))
      .toSorted((a, b) => a.localeCompare(b))
  }
  // The list grows while the plan is judged, off the screen, and its rows open: it is whole once it stands still.
  let before: string[] = []
  const stands = async () => {
    const last = before
    before = await remedies()
    return before.length > 2 && before.join() === last.join()
  }
  await expect.poll(stands, { interval: 500 }).toBe(true)
  for (const remedy of before) {
    const told = await list.textContent()
    await presses
      .and(list.getByText(remedy, { exact: true }))
      .first()
      .click()
    await page.getByText(`Done: ${remedy}`).waitFor()
    // It is not offered again, but where doing it once more helps more, as one more session does: then its item says otherwise.
    const done = async () =>
      !(await remedies()).includes(remedy) || (await list.textContent()) !== told
    await expect.poll(done).toBe(true)
    await page.getByRole('button', { name: 'Undo' }).click()
    await expect.poll(remedies).toEqual(before)
  }
  expect(troubles).toEqual([])
  await page.context().close()
})
