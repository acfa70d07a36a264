import { execFileSync } from 'node:child_process'
import { mkdtemp, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import * as z from 'zod/mini'
import { draftKept } from './draft-kept.ts'
import { newTrial } from './new-trial.ts'
import { openBrowser, overhangPixels, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
let browser: Browser
let folder: string

beforeAll(async () => {
  browser = await openBrowser()
  folder = await mkdtemp(join(tmpdir(), 'evenhand-way-'))
})
afterAll(async () => {
  await browser.close()
  await rm(folder, { recursive: true })
})

const tasters = ['AB', 'CD', 'EF']
const levels = ['66.4', '69', '71.7']

const heading = (page: Page, name: string) =>
  page.getByRole('heading', { level: 1, name, exact: true }).waitFor()

async function go(page: Page, place: string): Promise<void> {
  await page.getByRole('link', { name: place, exact: true }).click()
  await heading(page, place)
}

async function plan(page: Page): Promise<void> {
  await page.goto(baseUrl)
  await newTrial(page)
  await heading(page, 'Plan')
  await page.getByLabel('Question', { exact: true }).fill('Which water suits our bread?')
  await page.getByLabel('It is best somewhere in between').check()
  for (const [index, level] of levels.entries()) {
    const field = page.getByLabel(`Level ${index + 1}`, { exact: true })
    await field.fill(level)
    await field.blur()
  }
  // All of them in one line, and Enter.
  await page.getByLabel('New taster').fill(tasters.join(', '))
  await page.getByLabel('New taster').press('Enter')
  for (const initials of tasters) await page.getByRole('group', { name: initials }).waitFor()
  await page.getByLabel('Can people tell two of them apart?').selectOption('triangle')
  await page.getByRole('button', { name: 'Begin session 1' }).click()
  await heading(page, 'Bench')
}

async function weighAll(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Weigh', exact: true }).click()
  const shows = page.getByRole('button', { name: /^The scale shows/ })
  // With the last weight in, the dough is in front again.
  const weighed = page.getByRole('button', { name: 'Begin', exact: true })
  for (;;) {
    await shows.or(weighed).waitFor()
    if (await weighed.isVisible()) break
    const label = await shows.textContent()
    await shows.click()
    await page.waitForFunction(
      (before) =>
        ![...document.querySelectorAll('button')].some((each) => each.textContent === before),
      label,
    )
  }
}

/** The next dough is due sooner than the end of this mix, but while hands are on it the running one stays in front. */
const inFront = (page: Page) => page.getByRole('timer', { name: /^Mix, [A-Z]: \d/ }).waitFor()

async function bench(page: Page): Promise<void> {
  await weighAll(page)
  await page.getByRole('button', { name: 'Begin', exact: true }).click()
  await inFront(page)
  await page.getByRole('button', { name: 'Dough temperature', exact: true }).click()
  await page.getByLabel('Dough temperature').fill('24,')
  await draftKept(page, '24,')
  await page.reload()
  await page.getByRole('button', { name: /^Undo “[A-Z]: Mix begun”$/ }).waitFor()
  await inFront(page)
  await page.getByRole('button', { name: 'Dough temperature', exact: true }).click()
  await expect.poll(() => page.getByLabel('Dough temperature').inputValue()).toBe('24,')
  await page.getByLabel('Dough temperature').fill('24,5')
  await page.getByRole('button', { name: /^Keep 24,5/ }).click()
  await page.getByRole('button', { name: /^Undo “[A-Z]: Dough 24.5 °C”$/ }).waitFor()
  await page.getByRole('button', { name: 'Hands off', exact: true }).click()
  await page.getByRole('button', { name: /^Undo “[A-Z]: Mix: hands off”$/ }).click()
  await page.getByRole('button', { name: 'Hands off', exact: true }).click()
  await page.locator('nav[aria-label^="Doughs"] button', { hasText: 'rest' }).click()
  await page.getByRole('button', { name: 'Rest over and Fold 1 of 2 begins' }).click()
  await page.getByText('The rest is not over.').waitFor()
  await page.getByRole('button', { name: 'End the rest now' }).click()
  await page.getByRole('button', { name: /^Undo “[A-Z]: Mix done” and “Fold 1/ }).waitFor()
}

/** Each taster's likings, in the order the codes come to them: made up, and not the same for any two. */
const likings = [
  [6, 8, 5],
  [7, 6, 4],
  [5, 7, 8],
] as const

/** Whether the codes cannot be unsealed yet: as long as somebody planned has not tasted. */
async function expectKept(page: Page, kept: boolean): Promise<void> {
  await page.getByRole('button', { name: 'Hand the device on', exact: true }).click()
  const unseal = page.getByRole('button', { name: 'Unseal the codes' })
  await unseal.waitFor()
  expect(await unseal.isDisabled()).toBe(kept)
}

async function taste(page: Page): Promise<void> {
  for (const [person, initials] of tasters.entries()) {
    await page.getByRole('button', { name: new RegExp(`^${initials}`) }).click()
    await page.getByRole('button', { name: 'I can eat this: begin' }).click()
    for (const liking of likings[person] ?? []) {
      const code = await page.getByRole('heading', { level: 1, name: /^\d{3}$/ }).textContent()
      const name = `Seal ${code}`
      await page.getByRole('button', { name: new RegExp(`^Liking: ${liking}(,|$)`) }).click()
      await page.getByRole('button', { name: /^Softness of crumb: 5/ }).click()
      if (person === 0 && liking === 8) {
        await draftKept(page, '8')
        await draftKept(page, '5')
        await page.reload()
        await page.getByRole('button', { name: /^Liking: 8/, pressed: true }).waitFor()
      }
      await page.getByRole('button', { name, exact: true }).click()
      await page.getByRole('button', { name, exact: true }).waitFor({ state: 'detached' })
      await page.getByText('Sealed.', { exact: true }).waitFor({ state: 'detached' })
    }
    await page.getByText('Two of these are alike. Which one is different?').waitFor()
    await page
      .getByRole('button', { name: /^\d{3}$/ })
      .first()
      .click()
    await page.getByRole('button', { name: 'Seal this answer' }).click()
    await page.getByText('All your ballots are sealed.').waitFor()
    const thanks = page.getByRole('heading', { level: 1, name: 'Thank you.' })
    await thanks.waitFor()
    expect(await thanks.evaluate((element) => element === document.activeElement)).toBe(true)
    await expectKept(page, person < tasters.length - 1)
  }
  await page.getByText('Every ballot is in. The codes wait to be unsealed.').waitFor()
  await page.getByRole('button', { name: 'Unseal the codes' }).click()
  await page.getByRole('button', { name: 'Unseal for good' }).click()
  await page.getByText('The codes are open.').waitFor()
}

async function saved(page: Page, press: string): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: press }).click(),
  ])
  const path = join(folder, download.suggestedFilename())
  await download.saveAs(path)
  return path
}

const evenhand = (...words: string[]) =>
  execFileSync(process.execPath, ['src/cli/start.cjs', ...words], { encoding: 'utf8' })

const findingsShape = z.object({
  levels: z.array(z.object({ id: z.string(), name: z.number() })),
  responses: z.array(
    z.object({
      name: z.string(),
      levels: z.array(
        z.object({
          level: z.string(),
          n: z.number(),
          // A level nobody gave a value has a reason in place of a mean.
          mean: z.union([z.number(), z.object({ reason: z.string() })]),
        }),
      ),
    }),
  ),
})

test('the whole way: plan, weigh, bench with a reload, three tasters’ ballots, findings, report, and the command line says the same', async () => {
  const { page, troubles } = await visit(browser, baseUrl, {
    viewport: { width: 1280, height: 900 },
  })
  await plan(page)
  await bench(page)
  await page.getByRole('link', { name: 'Tasting', exact: true }).click()
  await page.getByRole('heading', { level: 1, name: 'Who is tasting?' }).waitFor()
  await page.setViewportSize({ width: 360, height: 800 })
  await taste(page)
  expect(await overhangPixels(page)).toBe(0)
  await page.setViewportSize({ width: 1280, height: 900 })

  await go(page, 'Findings')
  await page.getByRole('button', { name: 'Look now, and record it' }).click()
  await page.getByRole('list', { name: 'How far this carries' }).waitFor()
  await page.getByText(/^\d of 3 answers told the pieces at 66\.4\s% and 71\.7\s% apart/).waitFor()
  await go(page, 'Report')
  const file = await saved(page, 'Trial file')
  const markdown = await readFile(await saved(page, 'Report as Markdown'), 'utf8')

  const found = findingsShape.parse(JSON.parse(evenhand('findings', file, '--json')))
  const names = new Map(found.levels.map(({ id, name }) => [id, name]))
  const liking = (found.responses.find(({ name }) => name === 'Liking')?.levels ?? []).flatMap(
    ({ level, n, mean }) =>
      typeof mean === 'number' ? [{ level: names.get(level), n, mean }] : [],
  )
  expect(liking.map(({ level }) => String(level))).toEqual(levels)
  // Nine ballots, three a level; whichever codes they fell on, the likings above sum to 56.
  const sum = liking.reduce((total, { n, mean }) => total + n * mean, 0)
  expect(sum).toBeCloseTo(56, 9)
  await page.getByRole('button', { name: /^Appendix/ }).click()
  const rows = await page.getByRole('row').allInnerTexts()
  for (const { level, n, mean } of liking)
    expect(
      rows.some((row) => row.replace(/\s+/g, ' ').startsWith(`${level} % ${n} ${mean.toFixed(2)}`)),
      `${level} % with mean ${mean.toFixed(2)} in the report on the screen`,
    ).toBe(true)
  const written = join(folder, 'from-the-terminal.md')
  evenhand('report', file, '--out', written)
  expect(markdown).toBe(await readFile(written, 'utf8'))
  expect(troubles).toEqual([])
  await page.context().close()
})
