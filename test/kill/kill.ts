import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { build, preview } from 'vite'
import { browserToKill } from './browser-to-kill.ts'
import { type Change, changesAtTable, changesOfProfile } from './changes.ts'
import { watchSyncs } from './sync-trace.ts'
import { type Tally, tallyOnDisk } from './tally.ts'

const outDir = 'dist-kill'
/** Browsers, each on a profile of its own, are worked and killed side by side: which changes, and their part of all kills. */
const profiles = [
  { changesOf: changesOfProfile, part: 7 / 16 },
  { changesOf: changesOfProfile, part: 7 / 16 },
  { changesOf: changesAtTable, part: 1 / 8 },
]
/** So many changes of one profile may fail to come as far as the kept mark. */
const mostMisses = 8

/** A change that is not shown as kept by then counts as a miss. */
const mostMilliseconds = 20_000

type Done = Map<string, { kills: number; lost: number }>

/**
 * Kills the browser right after the page has shown a change as kept, over and over and over every kind of change, opens it
 * again on the same profile and looks whether the change is there. Prints the figures; fails when anything was lost.
 * `npm run kill -- 40` kills forty times, `npm run kill -- 40 built` without building again; `npm run kill -- synced` kills
 * nothing, but watches whether what was shown as kept had been synced to the disk.
 */
export async function run([times = '208', built]: string[] = []): Promise<number> {
  if (built !== 'built') await build({ logLevel: 'error', build: { outDir, emptyOutDir: true } })
  // The kept program is a trial of its own; here each fresh profile would only fetch it over and over.
  rmSync(join(outDir, 'sw.js'), { force: true })
  const server = await preview({
    logLevel: 'error',
    build: { outDir },
    preview: { port: 0, host: '127.0.0.1' },
  })
  const address = server.httpServer.address()
  if (address === null || typeof address === 'string') throw new Error('the server has no port')
  const began = Date.now()
  const done: Done = new Map()
  const baseUrl = `http://127.0.0.1:${address.port}/`
  try {
    if (times === 'synced') return await watchSyncs(baseUrl)
    const lanes = profiles.map(({ changesOf, part }) =>
      killOver(done, { baseUrl, changes: changesOf(), times: Math.ceil(Number(times) * part) }),
    )
    // Whatever stops one profile, the figures of what was done are printed.
    const ended = await Promise.allSettled(lanes)
    const failed = ended.flatMap((end) => (end.status === 'rejected' ? [String(end.reason)] : []))
    for (const reason of failed) console.log(`A profile stopped: ${reason}`)
    const code = report(done, Math.round((Date.now() - began) / 1000))
    return failed.length > 0 ? 1 : code
  } finally {
    await server.close()
  }
}

/** Kills one browser after another on one profile. */
async function killOver(
  done: Done,
  { baseUrl, changes, times }: { baseUrl: string; changes: readonly Change[]; times: number },
): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'evenhand-kill-'))
  let shown: Shown | null = null
  let misses = 0
  try {
    for (let round = 1; round <= times + 1; round += 1) {
      const { page, kill } = await browserToKill(folder)
      page.setDefaultTimeout(mostMilliseconds)
      try {
        const before: Tally =
          round === 1 ? { counts: {}, questions: [] } : await tallyOf(page, baseUrl)
        if (shown) count(done, shown, before)
        if (round > times) return
        const change = changes[(round - 1) % changes.length]
        if (!change) throw new Error('there are no changes')
        shown = await shownAsKept(change, { page, baseUrl, round }, before)
        misses += shown ? 0 : 1
        if (misses > mostMisses) throw new Error(`${misses} changes were never shown as kept`)
      } finally {
        await kill()
      }
    }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** Makes a change; null, and a word, where a busy machine never came to show it as kept: then there is nothing to look for. */
async function shownAsKept(
  change: Change,
  place: Parameters<Change['make']>[0],
  before: Tally,
): Promise<Shown | null> {
  try {
    return { change, expected: await change.make(place), before }
  } catch (cause) {
    const [what, , waits] = String(cause).split('\n')
    console.log(`${change.name} was not shown as kept: ${what}${waits ?? ''}`)
    return null
  }
}

/** The tally of the profile, read on a page of the same address that is not the program. */
async function tallyOf(page: Page, baseUrl: string): Promise<Tally> {
  await page.goto(`${baseUrl}manifest.webmanifest`)
  return await tallyOnDisk(page)
}

interface Shown {
  change: Change
  expected: { counts: Record<string, number>; question?: string }
  before: Tally
}

/** Looks whether what was shown as kept is on the disk after the kill. */
function count(done: Done, { change, expected, before }: Shown, found: Tally): void {
  const there =
    Object.entries(expected.counts).every(
      ([name, more]) => (found.counts[name] ?? 0) >= (before.counts[name] ?? 0) + more,
    ) &&
    Object.entries(before.counts).every(([name, number]) => (found.counts[name] ?? 0) >= number) &&
    (expected.question === undefined || found.questions.includes(expected.question))
  const line = done.get(change.name) ?? { kills: 0, lost: 0 }
  done.set(change.name, { kills: line.kills + 1, lost: line.lost + (there ? 0 : 1) })
  const all = [...done.values()].reduce((sum, { kills }) => sum + kills, 0)
  if (all % 20 === 0) console.log(`${all} kills`)
  if (!there) console.log(`LOST: ${change.name}, expected ${JSON.stringify(expected)}`)
}

function report(done: Done, seconds: number): number {
  let kills = 0
  let lost = 0
  for (const [name, line] of done) {
    console.log(`${name.padEnd(14)} ${String(line.kills).padStart(4)} kills, ${line.lost} lost`)
    kills += line.kills
    lost += line.lost
  }
  console.log(`${kills} kills of the browser after the kept mark, ${lost} lost, ${seconds} s`)
  return lost === 0 ? 0 : 1
}
