import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { build, preview } from 'vite'
import { browserToKill } from './browser-to-kill.ts'
import { type Change, changes } from './changes.ts'
import { type Tally, tallyOnDisk } from './tally.ts'

const outDir = 'dist-kill'

/**
 * Kills the browser right after the page has shown a change as kept, over and over and over every kind of change, opens it
 * again on the same profile and looks whether the change is there. Prints the figures; fails when anything was lost.
 * `npm run kill -- 40` kills forty times, `npm run kill -- 40 built` without building again.
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
  const folder = mkdtempSync(join(tmpdir(), 'evenhand-kill-'))
  try {
    return await killAll(folder, `http://127.0.0.1:${address.port}/`, Number(times))
  } finally {
    await server.close()
    rmSync(folder, { recursive: true, force: true })
  }
}

async function killAll(folder: string, baseUrl: string, times: number): Promise<number> {
  const done = new Map<string, { kills: number; lost: number }>()
  let shown: Shown | null = null
  let round = 0
  const began = Date.now()
  for (let kills = 0; kills < times; ) {
    const change = changes[round % changes.length]
    if (!change) throw new Error('there are no changes')
    round += 1
    const { page, kill } = await browserToKill(folder)
    try {
      const before = round === 1 ? { counts: {}, questions: [] } : await tallyOf(page, baseUrl)
      if (shown) count(done, shown, before)
      const expected = await change.make({ page, baseUrl, round })
      shown = { change, expected, before }
      kills += 1
    } finally {
      await kill()
    }
    console.log(
      `${kills} of ${times}: ${change.name}, ${Math.round((Date.now() - began) / 1000)} s`,
    )
  }
  const { page, kill } = await browserToKill(folder)
  try {
    if (shown) count(done, shown, await tallyOf(page, baseUrl))
  } finally {
    await kill()
  }
  return report(done)
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
function count(
  done: Map<string, { kills: number; lost: number }>,
  { change, expected, before }: Shown,
  found: Tally,
): void {
  const there =
    Object.entries(expected.counts).every(
      ([name, more]) => (found.counts[name] ?? 0) >= (before.counts[name] ?? 0) + more,
    ) &&
    Object.entries(before.counts).every(([name, number]) => (found.counts[name] ?? 0) >= number) &&
    (expected.question === undefined || found.questions.includes(expected.question))
  const line = done.get(change.name) ?? { kills: 0, lost: 0 }
  done.set(change.name, { kills: line.kills + 1, lost: line.lost + (there ? 0 : 1) })
  if (!there) console.log(`LOST: ${change.name}, expected ${JSON.stringify(expected)}`)
}

function report(done: Map<string, { kills: number; lost: number }>): number {
  let kills = 0
  let lost = 0
  for (const [name, line] of done) {
    console.log(`${name.padEnd(14)} ${String(line.kills).padStart(4)} kills, ${line.lost} lost`)
    kills += line.kills
    lost += line.lost
  }
  console.log(`${kills} kills of the browser after the kept mark, ${lost} lost`)
  return lost === 0 ? 0 : 1
}
