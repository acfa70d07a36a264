import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { browserToKill } from './browser-to-kill.ts'
import { changesOfProfile } from './changes.ts'

const presses = 10

interface Sync {
  /** Seconds since 1970, as the system's trace stamps them. */
  at: number
  path: string
}

/**
 * Presses at the Bench while the system's own trace of the browser (strace) runs, and looks for each whether the browser asked
 * the system to sync a file of its database between the press and the mark that it is kept. Prints the figures; fails when a
 * press was shown as kept without.
 */
export async function watchSyncs(baseUrl: string): Promise<number> {
  const folder = mkdtempSync(join(tmpdir(), 'evenhand-synced-'))
  const trace = join(folder, 'trace')
  const calls = 'trace=fsync,fdatasync,msync,sync_file_range'
  const { page, kill } = await browserToKill(join(folder, 'profile'), [
    ...['strace', '-f', '--seccomp-bpf', '-ttt', '-y', '-s', '0', '-e', calls, '-o', trace],
  ])
  const spans: { from: number; to: number }[] = []
  try {
    const [read] = changesOfProfile()
    await read?.make({ page, baseUrl, round: 1 })
    await page.goto(page.url().replace(/plan$/, 'bench'))
    for (let press = 1; press <= presses; press += 1) {
      const celsius = String(Math.round(230 + press) / 10)
      await page.getByRole('button', { name: 'Temperature', exact: true }).click()
      await page.getByLabel('Dough temperature').fill(celsius)
      // What was typed is kept as a draft a moment after the last key: that write must not be taken for the press's.
      await page.waitForTimeout(3000)
      const from = Date.now() / 1000
      await page.getByRole('button', { name: 'Keep', exact: true }).click()
      await page.getByRole('button', { name: new RegExp(`^Undo .*${celsius}`) }).waitFor()
      spans.push({ from, to: Date.now() / 1000 })
    }
  } finally {
    await kill()
  }
  const syncs = syncsOf(readFileSync(trace, 'utf8'))
  rmSync(folder, { recursive: true, force: true })
  const synced = spans.filter(({ from, to }) => syncs.some(({ at }) => at >= from && at <= to))
  const shown = spans
    .map(({ from, to }) => Math.round((to - from) * 1000))
    .toSorted((a, b) => a - b)
  console.log(`${syncs.length} syncs of the database in all`)
  console.log(
    `${synced.length} of ${spans.length} presses were synced to the disk before they were shown as kept; press to mark ${shown[Math.floor(shown.length / 2)]} ms, median, under the trace`,
  )
  return synced.length === spans.length ? 0 : 1
}

/** The syncs of files of the browser's database in a trace. */
function syncsOf(trace: string): Sync[] {
  return trace.split('\n').flatMap((line) => {
    const found = /^\d+ +(\d+\.\d+) (?:fsync|fdatasync|msync|sync_file_range)\(\d+<([^>]+)>/.exec(
      line,
    )
    const [, at, path] = found ?? []
    return at && path?.includes('/IndexedDB/') ? [{ at: Number(at), path }] : []
  })
}
