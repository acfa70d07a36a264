import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { newTrial } from './new-trial.ts'
import { readIn } from './read-in.ts'
import {
  expectClosed,
  expectCovered,
  expectNothingTold,
  handOn,
  heading,
  sealOne,
  takeDevice,
  whole,
} from './sealed-trial.ts'
import { openBrowser, overhangPixels, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

test('a baker who does not taste takes the device by one logged press, and their look ends where it is laid down again', async () => {
  const { page, troubles } = await visit(browser, baseUrl, {
    viewport: { width: 360, height: 800 },
  })
  await readIn(page, baseUrl, whole)
  await sealOne(page)
  await expectClosed(page)
  await page.getByRole('link', { name: 'Back to the tasting' }).click()
  await page.getByText('2 of 2').waitFor()
  expect(await page.getByRole('link').count()).toBe(0)
  await handOn(page)
  expect(await page.getByRole('link').allInnerTexts()).toEqual(['Tasting'])
  await takeDevice(page, 'I bake and do not taste: uncover Plan and Bench')
  // The head of the bench has no room for the question on a phone: it is on the page, and on the plan in sight.
  await page.getByText('71.7').first().waitFor({ state: 'attached' })
  await page.getByText('Looked behind the codes: bakes and does not taste (Bench)').waitFor()
  expect(await overhangPixels(page)).toBe(0)
  await page.getByRole('button', { name: 'Place: Bench' }).click()
  await page.getByRole('link', { name: 'Plan', exact: true }).click()
  await page.getByText('71.7').filter({ visible: true }).first().waitFor()
  await page.getByRole('button', { name: 'Place: Plan' }).click()
  await page.getByRole('link', { name: 'Tasting', exact: true }).click()
  await page.getByRole('button', { name: 'Take the device from the table' }).waitFor()
  await expectCovered(page, 'tasting after its baker looked')
  expect(await page.getByRole('link').allInnerTexts()).toEqual(['Tasting'])
  await expectClosed(page)
  await takeDevice(page, 'Take it, all stays covered')
  await heading(page, 'Notebook').waitFor()
  await page.goto(`${baseUrl}#/trial/${whole.trial.id}/bench`)
  await page.getByText('no scores are shown').waitFor()
  await expectCovered(page, 'bench once the device lay at the table')
  await page.getByRole('button', { name: 'I bake and do not taste: uncover for me' }).click()
  await page.getByRole('button', { name: 'Uncover', exact: true }).click()
  await page.getByText('Device taken from the table, all covered').waitFor()
  await expect.poll(() => page.getByText(/^Looked behind the codes/).count()).toBe(2)
  // What lasts is no press: its line offers no correction.
  expect(await page.getByRole('button', { name: /Looked behind the codes/ }).count()).toBe(0)
  await page.reload()
  await page.getByText('no scores are shown').waitFor()
  await expectCovered(page, 'bench after a reload')
  await page.goto(`${baseUrl}#/trial/${whole.trial.id}/findings`)
  await page.getByText('no scores are shown').waitFor()
  expect(await page.getByRole('button', { name: /uncover/ }).count()).toBe(0)
  expect(troubles).toEqual([])
  await page.context().close()
})

test('a new trial takes a sealed one’s plan only by a second press, which that trial’s log keeps', async () => {
  const { page, troubles } = await visit(browser, baseUrl)
  await readIn(page, baseUrl, whole)
  await sealOne(page)
  await handOn(page)
  await takeDevice(page, 'Take it, all stays covered')
  await newTrial(page)
  await page.getByRole('button', { name: 'an earlier trial', exact: true }).click()
  await page.getByRole('button', { name: 'Use its plan: A trial under cover' }).click()
  const look = page.getByRole('button', { name: 'Look, and use its plan: A trial under cover' })
  await look.waitFor()
  expectNothingTold(await page.locator('dialog[open]').innerHTML(), 'the earlier trials')
  await look.click()
  await page.getByText('Started from another plan').waitFor()
  await page.goto(`${baseUrl}#/trial/${whole.trial.id}/bench`)
  await page.getByRole('button', { name: 'I bake and do not taste: uncover for me' }).click()
  await page.getByRole('button', { name: 'Uncover', exact: true }).click()
  await page.getByText('Looked behind the codes: took its plan for another trial').waitFor()
  expect(troubles).toEqual([])
  await page.context().close()
})
