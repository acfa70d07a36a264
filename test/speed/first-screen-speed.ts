import type { Page } from 'playwright-core'
import { sampleTrial } from '../core/findings/sample-trial.ts'
import { type BuiltApp, middleOf, readTrialsIn } from './built-app.ts'

/** As slow as a phone of the lower middle, in times of this machine; common practice of browsers' own audits. */
const throttle = 4
const runs = 5
/** How long somebody has looked at Plan before the press: no time, and as long as a look at it takes. */
const looks = [
  { what: 'at once', milliseconds: 0 },
  { what: 'after a look of three seconds', milliseconds: 3000 },
]

/** Milliseconds from a press on the way to Findings to the frame in which its sentence, its chart's means and its rungs stand. */
async function pressToFirstScreen(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise<number>((tell) => {
        const way = [...document.querySelectorAll('a')].find((one) => /\/findings$/.test(one.href))
        if (!way) throw new Error('no way to Findings')
        const from = performance.now()
        const stands = () =>
          document.querySelector('[aria-label="How far this carries"]') !== null &&
          document.querySelectorAll('g[role="img"]').length >= 5
        const look = () => {
          if (!stands()) requestAnimationFrame(look)
          // The frame that holds it is painted when the one after it begins.
          else requestAnimationFrame(() => tell(performance.now() - from))
        }
        way.click()
        look()
      }),
  )
}

/** Opens Findings from Plan by a press, at the speed of a phone: its program in the browser's store. */
export async function measureFirstScreen(
  app: BuiltApp,
  say: (what: string, value: number, unit?: string) => void,
): Promise<void> {
  for (const { what, milliseconds } of looks) {
    const times: number[] = []
    for (let run = 0; run < runs; run += 1) times.push(await pressedAfter(app, milliseconds))
    const said = `from a press in Plan, ${what}, to Findings’ first screen, ${throttle} times slower`
    say(`${said}, median`, middleOf(times))
    say(`${said}, most`, Math.max(...times))
  }
}

async function pressedAfter(app: BuiltApp, milliseconds: number): Promise<number> {
  const whole = sampleTrial('focaccia-hydration')
  const page = await app.open()
  await readTrialsIn(page, [whole])
  const console = await page.context().newCDPSession(page)
  await console.send('Emulation.setCPUThrottlingRate', { rate: throttle })
  await page.goto(`${app.address}#/trial/${whole.trial.id}/plan`)
  await page.locator('#plan-fairness li').first().waitFor()
  await page.waitForTimeout(milliseconds)
  const time = await pressToFirstScreen(page)
  await page.context().browser()?.close()
  return time
}
