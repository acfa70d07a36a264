import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { type BallotSlip, readSlip } from '@/slip/ballot-slip.ts'
import { digitsOf } from '@/slip/digits.ts'
import { bytesOfLinkText } from '@/slip/link-text.ts'
import { bytesOfReturn } from '@/slip/return-slip.ts'
import { madeReturn, madeSlip } from '../slip/made-slip.ts'
import { filmOfCodes } from './film-of-codes.ts'
import { readIn } from './read-in.ts'
import { tastingTrial } from './tasting-trial.ts'
import { openBrowser, visit } from './visit.ts'

const baseUrl = inject('baseUrl')
const club = ['AN', 'BO', 'CY']
const { levels } = tastingTrial().plans[0] ?? { levels: [] }
const whole = tastingTrial({
  levels: levels.slice(0, 2),
  tasters: club.map((_, at) => ({ tasterId: `club-${at + 1}`, knows: false })),
})
const folder = mkdtempSync(join(tmpdir(), 'evenhand-film-'))
const film = join(folder, 'codes.y4m')
let browser: Browser

beforeAll(async () => {
  browser = await openBrowser([
    '--use-fake-ui-for-media-stream',
    '--use-fake-device-for-media-stream',
    `--use-file-for-fake-video-capture=${film}`,
  ])
})
afterAll(async () => {
  await browser.close()
  rmSync(folder, { recursive: true, force: true })
})

/** The code that a phone shows at its end, once all of its slip is scored. */
function codeOf(slip: BallotSlip): string {
  return digitsOf(bytesOfReturn(madeReturn(slip, { usual: null }), slip.key))
}

test('the host scans several in a row with the camera: each is in once, one held up again and one of another tasting are told', async () => {
  const { page, troubles } = await visit(browser, baseUrl)
  await readIn(page, baseUrl, whole)
  await page.goto(`${baseUrl}#/trial/${whole.trial.id}/tasting`)
  const press = (name: string | RegExp) => page.getByRole('button', { name }).first()
  await press(/On their own phones/).click()
  const codes: string[] = []
  for (const name of club) {
    await press(`Code for ${name}`).click()
    await page.getByText(`${name} scans this`).waitFor()
    const link = (await page.locator('[data-slip-link]').textContent()) ?? ''
    const read = readSlip(bytesOfLinkText(link.split('#/slip/')[1] ?? '') ?? new Uint8Array())
    if (!read.ok) throw new Error(read.reason)
    codes.push(codeOf(read.slip))
  }
  const [first = '', second = '', third = ''] = codes
  const foreign = codeOf(madeSlip(2, 2, { sets: [], tellApart: null }))
  writeFileSync(film, filmOfCodes([first, second, first, foreign, third]))
  await press(/Collect ballots/).click()
  // What is said of one code gives way to the next: all of it is written down here.
  await page.evaluate(() => {
    const said = new Set<string>()
    Object.assign(window, { said })
    new MutationObserver(() => {
      for (const each of document.querySelectorAll('[role="status"]'))
        said.add(each.textContent ?? '')
    }).observe(document.body, { childList: true, subtree: true, characterData: true })
  })
  await press('Scan ballots').click()
  const said = () =>
    page.evaluate(() => [...(window as unknown as { said: Set<string> }).said].join('\n'))
  for (const text of [
    'AN is in: 2 of 2',
    'BO is in: 2 of 2',
    'AN was in already',
    'another tasting',
    'CY is in: 2 of 2',
  ])
    await expect.poll(said).toContain(text)
  await press('Stop the camera').click()
  await press('Scan ballots').waitFor()
  await page.getByText('Every ballot is in. The codes wait to be unsealed.').waitFor()
  expect(troubles).toEqual([])
  await page.context().close()
})
