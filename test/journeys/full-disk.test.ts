import { readFileSync } from 'node:fs'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { fromMenu } from './from-menu.ts'
import { fillRoom, makeRoom, openNarrow, recordCounts } from './full-disk.ts'
import { openPlanParts } from './new-trial.ts'
import { openBrowser, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

/** A page whose browser has little room, on a sample trial in the midst of its day. */
async function onTheBench(): Promise<Page> {
  const { page } = await visit(browser, baseUrl)
  await openNarrow(page, baseUrl)
  await page.getByRole('button', { name: /flatbread/ }).click()
  await page.waitForURL(/bench$/)
  await page.getByRole('region', { name: 'Now' }).waitFor()
  return page
}

const alertOf = (page: Page, words: RegExp | string) =>
  page.getByRole('alert').filter({ hasText: words })

const noRoom = /This device has no room left/

test('on a full disk a press at the Bench says that it was not logged, and is taken once there is room', async () => {
  const page = await onTheBench()
  await fillRoom(page)
  const before = await recordCounts(page)
  const press = page.getByRole('region', { name: 'Main press' }).getByRole('button').first()
  const words = (await press.textContent()) ?? ''
  await press.click()
  await alertOf(page, 'This press was not logged').filter({ hasText: noRoom }).waitFor()
  expect(await press.textContent()).toBe(words)
  expect(await recordCounts(page)).toEqual(before)

  await page.getByRole('button', { name: 'More to log' }).click()
  await page.getByRole('button', { name: 'Photo', exact: true }).click()
  await page.getByLabel('Caption').fill('too wet to fold')
  await page.locator('input[type=file][accept="image/*"]:not([capture])').setInputFiles({
    ...{ name: 'dough.png', mimeType: 'image/png' },
    buffer: readFileSync('src/app/frame/public/icon-192.png'),
  })
  const photo = alertOf(page, 'The photo was not kept')
  await photo.filter({ hasText: noRoom }).waitFor()
  expect(await page.getByLabel('Caption').inputValue()).toBe('too wet to fold')
  expect(await recordCounts(page)).toEqual(before)

  // Left unkept, it is shown wherever the person goes, and kept from there.
  await page.getByRole('button', { name: 'Back', exact: true }).click()
  const carried = alertOf(page, 'The photo “too wet to fold” could not be kept')
  await carried.filter({ hasText: noRoom }).waitFor()
  expect(await recordCounts(page)).toEqual(before)

  await makeRoom(page)
  await carried.getByRole('button', { name: 'Try again' }).click()
  await page.getByRole('button', { name: /^Undo .*[Pp]hoto/ }).waitFor()
  expect(await carried.count()).toBe(0)
  const { photos = 0, pictures = 0, events = 0 } = before
  expect(await recordCounts(page)).toMatchObject({
    ...{ photos: photos + 1, pictures: pictures + 1, events: events + 1 },
  })
  await press.click()
  await expect.poll(async () => (await recordCounts(page)).events).toBe(events + 2)
  await page.context().close()
})

test('on a full disk a ballot is not sealed, says so, and keeps its answers until there is room', async () => {
  const page = await onTheBench()
  await page.goto(page.url().replace('bench', 'tasting'))
  await page
    .getByRole('button', { name: /not begun|of \d+/ })
    .first()
    .click()
  await page.getByRole('button', { name: 'I can eat this: begin' }).click()
  const open = page.getByRole('button', { name: /^\d+ still to answer$/ })
  await open.waitFor()
  await fillRoom(page)
  const before = await recordCounts(page)
  // Liking stands alone until it is answered; then the other questions are there.
  await page.getByRole('button', { name: /^Liking: 5\b/ }).click()
  for (const scale of await page.getByRole('group').all()) {
    const step = scale.getByRole('button', { name: /: 5\b/, pressed: false })
    if ((await step.count()) > 0) await step.first().click()
  }
  await open.waitFor({ state: 'detached' })
  const seal = page.getByRole('button', { name: /^Seal \d{3}$/ })
  const code = (await seal.textContent()) ?? ''
  await alertOf(page, 'A half-filled ballot could not be kept').waitFor()
  await seal.click()
  await alertOf(page, 'Nothing of this last change was kept').filter({ hasText: noRoom }).waitFor()
  expect(await page.getByRole('button', { pressed: true }).count()).toBeGreaterThan(0)
  expect(await recordCounts(page)).toEqual(before)
  await page.getByRole('button', { name: 'Close this message' }).click()
  await makeRoom(page)
  await page.getByRole('button', { name: code, exact: true }).click()
  await page.getByRole('button', { name: code, exact: true }).waitFor({ state: 'detached' })
  const { ballots = 0 } = before
  expect((await recordCounts(page)).ballots).toBe(ballots + 1)
  expect(await page.getByRole('alert').allTextContents()).toEqual([])
  await page.context().close()
})

test('on a full disk the plan says that a change is not kept, goes on saying so elsewhere, and keeps it at last', async () => {
  const page = await onTheBench()
  await page.goto(page.url().replace('bench', 'plan'))
  await openPlanParts(page)
  const question = page.getByLabel('Question', { exact: true })
  await question.waitFor()
  await page.locator('[data-kept=kept]').waitFor()
  await fillRoom(page)
  await question.fill('Typed on a full disk?')
  await alertOf(page, 'The last change could not be kept').filter({ hasText: noRoom }).waitFor()
  await page.getByText('Your last change is not kept yet').waitFor()
  await page.getByRole('link', { name: 'Notebook' }).click()
  const note = alertOf(
    page,
    'The last change of the plan “Typed on a full disk?” could not be kept',
  )
  await note.waitFor()
  await makeRoom(page)
  await note.getByRole('button', { name: 'Try again' }).click()
  await note.waitFor({ state: 'detached' })
  await page.reload()
  await page.getByRole('link', { name: 'Typed on a full disk?' }).waitFor()
  await page.context().close()
})

test('on a full disk the notebook stays where it is: a new trial, a sample and a file each say that they did not come in', async () => {
  const page = await onTheBench()
  const saving = page.waitForEvent('download')
  await page.goto(baseUrl)
  await fromMenu(page, 'Back up all')
  const zip = await (await saving).path()
  await fillRoom(page)
  const before = await recordCounts(page)
  const list = page.getByRole('list', { name: 'Trials' })

  await page.getByRole('button', { name: 'New trial' }).click()
  await page.getByRole('button', { name: 'Skip: a plain loaf to change' }).click()
  await alertOf(page, noRoom).waitFor()
  // The start of a trial stands as it was answered; the way back is the notebook.
  await page.getByRole('heading', { level: 1, name: 'New trial' }).waitFor()
  await page.goBack()
  await list.waitFor()
  await page.getByLabel('Search').fill('flatbread')
  await page.getByRole('button', { name: 'Close this message' }).click()
  await alertOf(page, noRoom).waitFor({ state: 'detached' })

  await page.getByLabel('Search').fill('')
  await page.getByRole('button', { name: /focaccia/ }).click()
  await alertOf(page, noRoom).waitFor()
  await list.waitFor()
  await page.getByRole('button', { name: 'Close this message' }).click()

  const file = { name: 'loaf.json', mimeType: 'application/json' }
  await page
    .locator('input[type=file][accept*=json]')
    .setInputFiles({ ...file, buffer: readFileSync('trials/pan-loaf-salt.json') })
  await alertOf(page, 'loaf.json could not be read in').filter({ hasText: noRoom }).waitFor()
  expect(await recordCounts(page)).toEqual(before)

  // Backing up needs no room in the notebook.
  const again = page.waitForEvent('download')
  await fromMenu(page, 'Back up all')
  await again
  await restoreElsewhere(zip)
  await page.context().close()
})

/** Another device without room for the backup says so, with how far it was, and takes the rest once there is room. */
async function restoreElsewhere(zip: string): Promise<void> {
  const { page } = await visit(browser, baseUrl)
  await openNarrow(page, baseUrl)
  await page.getByRole('heading', { level: 1, name: 'Notebook' }).waitFor()
  await fillRoom(page)
  const given = { name: 'mine.zip', mimeType: 'application/zip', buffer: readFileSync(zip) }
  const restore = async () => {
    await page.locator('input[type=file][accept*=zip]').setInputFiles(given)
    await page.getByRole('button', { name: 'Restore it' }).click()
  }
  await restore()
  const told = page.getByRole('region', { name: 'Restored from mine.zip' })
  await told.getByText(/0 trials came in.*no room left.*1 trial of the backup/).waitFor()
  expect(await recordCounts(page)).toMatchObject({ trials: 0, events: 0 })
  await makeRoom(page)
  await restore()
  await told.getByText('1 trial came in').waitFor()
  await page.context().close()
}
