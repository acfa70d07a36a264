import type { Page } from 'playwright-core'
import { sampleTrial } from '../core/findings/sample-trial.ts'
import { type BuiltApp, middleOf, readTrialsIn } from './built-app.ts'

/** As slow as a phone of the lower middle, in times of this machine; common practice of browsers' own audits. */
const throttle = 4
const runs = 5

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

/** Opens Findings from Plan by a press, at the speed of a phone: its program in the browser's store, its answer not yet reckoned. */
export async function measureFirstScreen(
  app: BuiltApp,
  say: (what: string, value: number, unit?: string) => void,
): Promise<void> {
  const whole = sampleTrial('focaccia-hydration')
  const times: number[] = []
  for (let run = 0; run < runs; run += 1) {
    const page = await app.open()
    await readTrialsIn(page, [whole])
    const console = await page.context().newCDPSession(page)
    await console.send('Emulation.setCPUThrottlingRate', { rate: throttle })
    await page.goto(`${app.address}#/trial/${whole.trial.id}/plan`)
    await page.locator('#plan-fairness li').first().waitFor()
    await page.waitForLoadState('networkidle')
    times.push(await pressToFirstScreen(page))
    await page.context().browser()?.close()
  }
  say(`from a press to Findings’ first screen, ${throttle} times slower, median`, middleOf(times))
  say(`from a press to Findings’ first screen, ${throttle} times slower, most`, Math.max(...times))
}
