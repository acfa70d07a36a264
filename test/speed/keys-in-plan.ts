import { type CDPSession, chromium, type Page } from 'playwright-core'
import { build, preview } from 'vite'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { CHROMIUM_ARGS, findChromium } from '../browser/chromium.mjs'
import { planForSpeed } from './plan-for-speed.ts'

const outDir = 'dist-speed'
const keys = 40

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

/** Milliseconds that the page's thread worked since the browser began, in scripts, styles and layout. */
async function worked(session: CDPSession): Promise<number> {
  const { metrics } = await session.send('Performance.getMetrics')
  const of = (name: string) => metrics.find((each) => each.name === name)?.value ?? 0
  return 1000 * (of('ScriptDuration') + of('LayoutDuration') + of('RecalcStyleDuration'))
}

/** From a key to the frame after the one it is drawn in, and to the new answer of the worker; measured inside the page. */
function watchKeys(page: Page): Promise<void> {
  return page.evaluate(() => {
    const times: { paint: number[]; fairness: number[] } = { paint: [], fairness: [] }
    Object.assign(window, { keyTimes: times })
    let from = 0
    document.addEventListener(
      'keydown',
      () => {
        from = performance.now()
        requestAnimationFrame(() => {
          const { port1, port2 } = new MessageChannel()
          port1.onmessage = () => times.paint.push(performance.now() - from)
          port2.postMessage(null)
        })
      },
      { capture: true },
    )
    const panel = document.querySelector('#plan-fairness')
    if (!panel) throw new Error('no fairness panel on the page')
    new MutationObserver(() => times.fairness.push(performance.now() - from)).observe(panel, {
      ...{ childList: true, subtree: true, characterData: true },
    })
  })
}

const middleOf = (values: readonly number[]) =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN

/** Types into a level of the largest plan in the built app, and says what a key costs; compares nothing. */
export async function measureKeys(
  say: (what: string, milliseconds: number) => void,
): Promise<void> {
  process.env.NODE_ENV = 'production'
  await build({ mode: 'production', logLevel: 'error', build: { outDir, emptyOutDir: true } })
  const server = await preview({ logLevel: 'error', build: { outDir }, preview: { port: 0 } })
  const found = await findChromium()
  const browser = await chromium.launch({
    ...(found ? { executablePath: found.path } : {}),
    args: CHROMIUM_ARGS,
  })
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 } })
    await page.goto(server.resolvedUrls?.local[0] ?? '')
    const whole = trialForSpeed()
    await page.locator('input[type=file][accept*=json]').setInputFiles({
      name: 'plan.evenhand.json',
      mimeType: 'application/json',
      buffer: Buffer.from(writeTrialFile(whole)),
    })
    await page
      .getByText(whole.plans[0]?.question ?? '')
      .first()
      .waitFor()
    await page.goto(`${server.resolvedUrls?.local[0]}#/trial/${whole.trial.id}/plan`)
    const level = page.getByLabel('Level 3', { exact: true })
    await level.focus()
    await page.locator('#plan-fairness li').first().waitFor()
    await page.keyboard.press('End')
    await watchKeys(page)
    const session = await page.context().newCDPSession(page)
    await session.send('Performance.enable')
    const before = await worked(session)
    for (let key = 0; key < keys; key += 1) {
      await page.keyboard.press(key % 2 === 0 ? '5' : 'Backspace', { delay: 0 })
      await page.waitForTimeout(400)
    }
    const each = ((await worked(session)) - before) / keys
    const { paint, fairness } = await page.evaluate(
      () => Reflect.get(window, 'keyTimes') as { paint: number[]; fairness: number[] },
    )
    say('scripts, styles and layout for a key in a level, keeping it included', each)
    say('from the key to the end of its frame', middleOf(paint))
    say('from the key to the new fairness check', middleOf(fairness))
  } finally {
    await browser.close()
    await server.close()
  }
}
