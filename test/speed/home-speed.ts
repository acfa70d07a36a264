import type { Page } from 'playwright-core'
import { type BuiltApp, middleOf, readTrialsIn } from './built-app.ts'
import { dayForSpeed } from './day-for-speed.ts'

const openings = 5

/** Puts copies of the one trial into the database beside it, each with its plan and its line in the list. */
export function copyTrial(page: Page, copies: number): Promise<void> {
  return page.evaluate(
    (howMany) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('evenhand')
        opening.onerror = () => reject(opening.error)
        opening.onsuccess = () => {
          const database = opening.result
          const change = database.transaction(['trials', 'plans', 'summaries'], 'readwrite')
          for (const name of ['trials', 'plans', 'summaries']) {
            const table = change.objectStore(name)
            const reading = table.getAll()
            reading.onsuccess = () => {
              const [first] = reading.result
              for (let copy = 0; copy < howMany; copy += 1) {
                const own: Record<string, unknown> = structuredClone(first)
                const trialId = `copy-${copy}`
                if ('trialId' in own) own.trialId = trialId
                if (name === 'trials')
                  Object.assign(own, { id: trialId, planId: `plan-of-copy-${copy}` })
                if (name === 'plans') own.id = `plan-of-copy-${copy}`
                table.put(own)
              }
            }
          }
          change.oncomplete = () => {
            database.close()
            resolve()
          }
          change.onerror = () => reject(change.error)
        }
      }),
    copies,
  )
}

async function timeOfOpening(page: Page, address: string): Promise<number> {
  const from = Date.now()
  await page.goto(address)
  await page.reload()
  await page.getByRole('list', { name: 'Trials' }).getByRole('link').first().waitFor()
  return Date.now() - from
}

/** Reckoned in the page, frame by frame: a look from outside comes when it comes. */
function timeOfSearch(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise<number>((tell) => {
        const field = document.querySelector<HTMLInputElement>('input[type=search]')
        if (!field) throw new Error('nothing to search in')
        const from = performance.now()
        field.focus()
        document.execCommand('insertText', false, 'no such words')
        const look = () => {
          const none = document.body.textContent?.includes('No trial here has all of these words.')
          if (none) tell(performance.now() - from)
          else requestAnimationFrame(look)
        }
        look()
      }),
  )
}

/** Opens the notebook anew, looks for a word, and begins a trial. */
async function measureHome(app: BuiltApp, trials: number) {
  const page = await app.open()
  await readTrialsIn(page, [dayForSpeed(1)])
  await copyTrial(page, trials - 1)
  const times = {
    open: [] as number[],
    searchAtOnce: [] as number[],
    search: [] as number[],
    begin: [] as number[],
  }
  for (let opening = 0; opening < openings; opening += 1) {
    times.open.push(await timeOfOpening(page, app.address))
    times.searchAtOnce.push(await timeOfSearch(page))
    await timeOfOpening(page, app.address)
    await page.waitForTimeout(1000)
    times.search.push(await timeOfSearch(page))
  }
  const begun = Date.now()
  await page.getByRole('button', { name: 'New trial' }).click()
  await page.getByRole('button', { name: 'Skip: a plain loaf to change' }).click()
  await page.getByRole('heading', { name: 'Plan' }).waitFor()
  times.begin.push(Date.now() - begun)
  return {
    open: middleOf(times.open),
    search: middleOf(times.search),
    searchAtOnce: middleOf(times.searchAtOnce),
    begin: middleOf(times.begin),
  }
}

/** What the notebook's own page costs with few trials and with very many. */
export async function measureNotebook(
  app: BuiltApp,
  say: (what: string, value: number, unit?: string) => void,
): Promise<void> {
  const few = await measureHome(app, 20)
  const many = await measureHome(app, 2000)
  for (const [what, name] of [
    ['opening the notebook', 'open'],
    ['a search in it, in the frame it opens', 'searchAtOnce'],
    ['a search in it, a second later', 'search'],
    ['a new trial from it', 'begin'],
  ] as const) {
    say(`${what}, 20 trials`, few[name])
    say(`${what}, 2,000 trials`, many[name])
    say(`${what}: times longer`, many[name] / few[name], '')
  }
}
