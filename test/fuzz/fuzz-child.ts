import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { HalfTaken } from './fuzz-backup.ts'
import { fuzzCase, fuzzSources } from './fuzz-case.ts'

/** What the child tells of one case; `milliseconds` is time of the processor, so that a busy machine slows nothing down. */
export interface FuzzMessage {
  number: number
  kind?: string
  came?: string
  searched?: boolean
  milliseconds: number
  /** Most that the process has held so far. */
  megabytes: number
  defect?: string
  halfTaken?: boolean
}

/** Works the cases from one number up to another, telling each as it begins and ends. Arguments: seed, first, end. */
export async function run([seed, first, end]: readonly string[]): Promise<number> {
  const folder = mkdtempSync(join(tmpdir(), 'evenhand-fuzz-'))
  const sources = await fuzzSources(process.cwd())
  const tell = (message: FuzzMessage | { begins: number }) => process.send?.(message)
  try {
    for (let number = Number(first); number < Number(end); number += 1) {
      tell({ begins: number })
      const before = process.cpuUsage()
      const spent = () => {
        const { user, system } = process.cpuUsage(before)
        return (user + system) / 1000
      }
      const megabytes = () => process.resourceUsage().maxRSS / 1024
      try {
        const outcome = await fuzzCase(Number(seed), number, sources, folder)
        tell({ number, ...outcome, milliseconds: spent(), megabytes: megabytes() })
      } catch (error) {
        const defect = error instanceof Error ? (error.stack ?? error.message) : String(error)
        const halfTaken = error instanceof HalfTaken
        tell({ number, defect, halfTaken, milliseconds: spent(), megabytes: megabytes() })
      }
    }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
  process.disconnect?.()
  return 0
}
