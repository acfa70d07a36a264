import type { Page } from 'playwright-core'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { type BuiltApp, middleOf, readTrialsIn } from './built-app.ts'
import { keyFrames, traceCategories } from './key-frames.ts'
import { planForSpeed } from './plan-for-speed.ts'
import { countRecordsRead, recordsRead } from './records-read.ts'

const pairs = 16
const pauseMilliseconds = 350
const frameMilliseconds = 1000 / 60

function trialForSpeed(): WholeTrial {
  const { plan, kitchen } = planForSpeed()
  const { trialId, id: planId } = plan
  const tasters = plan.tasters.map(({ tasterId }, at) => ({
    ...{ id: tasterId, kind: 'taster' as const, initials: `T${at}` },
  }))
  return {
    trial: { id: trialId, createdAt: 0, zone: 'UTC', planId, seed: 1, revision: 1, note: '' },
    plans: [plan],
    ...{ sessions: [], events: [], ballots: [], photos: [] },
    kitchen: [...kitchen, ...tasters].toSorted((a, b) => (a.id < b.id ? -1 : 1)),
  }
}

/** Marks each key when its input is heard, and times the new answer of the worker; inside the page. */
function watchKeys(page: Page): Promise<void> {
  return page.evaluate(() => {
    const fairness: number[] = []
    Object.assign(window, { fairnessTimes: fairness })
    let from = 0
    document.addEventListener('keydown', ({ timeStamp }) => (from = timeStamp), { capture: true })
    document.addEventListener('input', () => performance.mark('key'), { capture: true })
    const panel = document.querySelector('#plan-fairness')
    if (!panel) throw new Error('no fairness panel on the page')
    const sheet = document.querySelector('#plan-weigh-sheet table')
    if (!sheet) throw new Error('no weigh sheet on the page')
    const anything = { childList: true, subtree: true, characterData: true }
    new MutationObserver(() => fairness.push(performance.now() - from)).observe(panel, anything)
    new MutationObserver(() => performance.mark('weights')).observe(sheet, anything)
  })
}

/** The presses that open a field in its place, and shut it again where leaving it does not. */
const openers = {
  levels: (page: Page) => page.locator('main p span[role="button"]', { hasText: /^60$/ }),
  percent: (page: Page) => page.getByRole('button', { name: /^seed 3, percent of flour/ }),
  formula: (page: Page) => page.getByRole('button', { name: /^Formula/ }),
} as const

interface Kind {
  what: string
  field: string
  opens: keyof typeof openers
  first: readonly string[]
  keys: readonly string[]
}

/** Keys that change every weight of one level, or of all, and what is typed before them. */
const kinds: readonly Kind[] = [
  {
    what: 'the last digit of a level',
    ...{ field: 'Level 3', opens: 'levels', first: [], keys: ['Backspace', '5'] },
  },
  {
    what: 'a decimal of a level',
    ...{ field: 'Level 5', opens: 'levels', first: ['.'], keys: ['5', 'Backspace'] },
  },
  {
    what: 'the percent of an ingredient',
    ...{ field: 'seed 3, percent of flour', opens: 'percent' },
    ...{ first: ['.'], keys: ['5', 'Backspace'] },
  },
  {
    what: 'the flour of a batch',
    ...{ field: 'Flour of a batch', opens: 'formula', first: [], keys: ['5', 'Backspace'] },
  },
]

/** Presses the keys of one kind and says what it cost until the frame with the key was painted, and that with the new weights. */
async function measureKind(
  page: Page,
  { what, field, opens, first, keys }: Kind,
  say: (what: string, milliseconds: number) => void,
): Promise<void> {
  const opener = openers[opens](page).first()
  await opener.click()
  await page.getByRole('textbox', { name: field, exact: true }).focus()
  for (const key of ['End', ...first]) await page.keyboard.press(key)
  await page.waitForTimeout(pauseMilliseconds)
  const browser = page.context().browser()
  if (!browser) throw new Error('the page has no browser to trace')
  await browser.startTracing(page, { categories: traceCategories })
  for (let pair = 0; pair < pairs; pair += 1) {
    for (const key of keys) {
      await page.keyboard.press(key)
      await page.waitForTimeout(pauseMilliseconds + Math.random() * frameMilliseconds)
    }
  }
  if (opens !== 'percent') await opener.click()
  const trace = (await browser.stopTracing()).toString('utf8')
  for (const shows of ['key', 'weights'] as const) {
    const frames = keyFrames(trace, shows)
    if (frames.length === 0) throw new Error(`no frame was traced for ${what}`)
    const worked = frames.map((frame) => frame.workedMilliseconds)
    const passed = frames.map((frame) => frame.passedMilliseconds)
    const said = `key to the frame with ${shows === 'key' ? 'it' : 'its weights'}, ${what}`
    say(`${said}: work of the page, median`, middleOf(worked))
    say(`${said}: work of the page, least`, Math.min(...worked))
    say(`${said}: work of the page, most`, Math.max(...worked))
    say(`${said}: by the clock, median`, middleOf(passed))
    say(`${said}: by the clock, least`, Math.min(...passed))
  }
}

/** Types into the largest plan in the built app, and says what a key costs; compares nothing. */
export async function measureKeys(
  app: BuiltApp,
  say: (what: string, value: number, unit?: string) => void,
): Promise<void> {
  const page = await app.open()
  await countRecordsRead(page)
  await page.reload()
  const whole = trialForSpeed()
  await readTrialsIn(page, [whole])
  await page.goto(`${app.address}#/trial/${whole.trial.id}/plan`)
  await page.locator('#plan-fairness li').first().waitFor()
  await watchKeys(page)
  for (const kind of kinds) await measureKind(page, kind, say)
  const fairness = await page.evaluate(() => Reflect.get(window, 'fairnessTimes') as number[])
  say('from the key to the new fairness check', middleOf(fairness))
  say('records read by a key that is kept', await recordsOfKey(page), '')
}

/** A key whose change was kept, until all that follows from it has been read. */
async function recordsOfKey(page: Page): Promise<number> {
  const counts: number[] = []
  await openers.levels(page).first().click()
  await page.getByRole('textbox', { name: 'Level 3', exact: true }).focus()
  for (const key of ['End', 'Backspace', '5', 'Backspace', '5']) {
    await recordsRead(page)
    await page.keyboard.press(key)
    await page.waitForTimeout(5 * pauseMilliseconds)
    counts.push(await recordsRead(page))
  }
  return middleOf(counts)
}
