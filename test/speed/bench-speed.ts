import type { Page } from 'playwright-core'
import { type BuiltApp, middleOf, readTrialsIn } from './built-app.ts'
import { dayForSpeed } from './day-for-speed.ts'
import { countRecordsRead, recordsRead } from './records-read.ts'

const pauseMilliseconds = 1200
const presses = 9
const idleSeconds = 20

/** Opens the Bench of a day behind so many lines of log. */
async function openBench(app: BuiltApp, lines: number): Promise<Page> {
  const whole = dayForSpeed(lines)
  const page = await app.open()
  await countRecordsRead(page)
  await page.reload()
  await readTrialsIn(page, [whole])
  await page.goto(`${app.address}#/trial/${whole.trial.id}/bench`)
  await page.getByRole('region', { name: 'Now' }).waitFor()
  await page.waitForTimeout(pauseMilliseconds)
  return page
}

/** From the click to the frame in which the press can be undone; inside the page. */
function pressOnce(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        const undoWords = () =>
          [...document.querySelectorAll('button')].find((each) =>
            each.textContent?.startsWith('Undo'),
          )?.textContent
        const before = undoWords()
        const from = performance.now()
        const watcher = new MutationObserver(() => {
          if (undoWords() === before) return
          watcher.disconnect()
          requestAnimationFrame(() => setTimeout(() => resolve(performance.now() - from)))
        })
        watcher.observe(document.body, { childList: true, subtree: true, characterData: true })
        document.querySelector<HTMLElement>('section[aria-label="Main press"] button')?.click()
      }),
  )
}

async function measurePresses(app: BuiltApp, lines: number) {
  const page = await openBench(app, lines)
  const times: number[] = []
  const records: number[] = []
  for (let press = 0; press < presses; press += 1) {
    await recordsRead(page)
    times.push(await pressOnce(page))
    await page.waitForTimeout(pauseMilliseconds)
    records.push(await recordsRead(page))
  }
  return { milliseconds: middleOf(times), least: Math.min(...times), records: middleOf(records) }
}

/**
 * Milliseconds of script in each second in which nobody touches the Bench, while a step runs: the page's own work, whatever
 * else the machine did meanwhile.
 */
async function idleScript(app: BuiltApp, lines: number): Promise<number> {
  const page = await openBench(app, lines)
  await pressOnce(page)
  await page.waitForTimeout(5000)
  const client = await page.context().newCDPSession(page)
  await client.send('Performance.enable', { timeDomain: 'threadTicks' })
  const scriptSeconds = async () => {
    const { metrics } = await client.send('Performance.getMetrics')
    return metrics.find(({ name }) => name === 'ScriptDuration')?.value ?? Number.NaN
  }
  const from = await scriptSeconds()
  await page.waitForTimeout(idleSeconds * 1000)
  return ((await scriptSeconds()) - from) * (1000 / idleSeconds)
}

/** Works the Bench of the built app behind a short and a very long log, and says what a press and a second of rest cost. */
export async function measureBench(
  app: BuiltApp,
  say: (what: string, value: number, unit?: string) => void,
): Promise<void> {
  const short = await measurePresses(app, 20)
  const long = await measurePresses(app, 5000)
  for (const [lines, { milliseconds, least, records }] of [
    ['20', short],
    ['5,000', long],
  ] as const) {
    say(`press to shown behind ${lines} lines of log, median`, milliseconds)
    say(`press to shown behind ${lines} lines of log, least`, least)
    say(`records read by a press behind ${lines} lines of log`, records, '')
  }
  say('times longer behind 5,000 lines than behind 20', long.milliseconds / short.milliseconds, '')
  say('script in a second of rest at the Bench, 113 lines of log', await idleScript(app, 113))
}
