import type { House } from '@/core/house/house-record.ts'
import { type HeldInBackup, markOf, readHeld } from './held-in-backup.ts'
import type { Store } from './store.ts'
import { allLines, summariesMissing } from './stored-summaries.ts'
import type { Summary } from './summary-record.ts'

/** How the notebook stands to its last backup. */
export interface BackupState {
  /** When the last backup of this device was begun; null while there was none. */
  at: number | null
  /**
   * Trials and house formulas that are not in it as they are now, whatever the clock said; of a backup that did not write down
   * what it held, those with newer work. Samples that were only opened do not count.
   */
  trials: number
  houses: number
  /** Whether the kitchen's things are not in it as they are now. */
  kitchen: boolean
  /** Whether any of these trials was begun: a plan alone is soon made again. */
  begun: boolean
}

const key = 'last-backup'

/** By the lines of the home list: of a notebook of thousands no trial is read. Only reads, so that a live query may use it. */
export function backupState(store: Store): Promise<BackupState> {
  return store.transaction('r', store.tables, async () => {
    const [last, settings] = await Promise.all([
      store.drafts.get(key),
      store.settings.get('settings'),
    ])
    const at = Number(last?.values.at ?? Number.NaN)
    const since = Number.isFinite(at) ? at : 0
    const held = readHeld(last?.values.held)
    const opened =
      settings && 'openedSamples' in settings ? Object.values(settings.openedSamples ?? {}) : []
    const isNewer = (line: Summary) =>
      held ? held.trials[line.trialId] !== line.revision : line.lastAt > since
    const lines = [...(await allLines(store)), ...(await summariesMissing(store))]
    const newer = lines.filter((line) => isNewer(line) && !opened.includes(line.trialId))
    const houses = await store.houses.toArray()
    const isNewHouse = (house: House) =>
      held ? held.houses[house.id] !== markOf(house) : house.revisions.some((one) => one.at > since)
    return {
      at: Number.isFinite(at) ? at : null,
      trials: newer.length,
      houses: houses.filter(isNewHouse).length,
      kitchen: held !== null && held.kitchen !== markOf(await store.kitchen.toArray()),
      begun: newer.some(({ stage }) => stage !== 'planning'),
    }
  })
}

/** Writes down that a backup begun at this moment is in somebody's hands, and what it holds. */
export async function keepBackedUp(store: Store, at: number, held?: HeldInBackup): Promise<void> {
  const holds = held ? { held: JSON.stringify(held) } : {}
  await store.drafts.put({ key, values: { at: String(at), ...holds } })
}

const dayMilliseconds = 86_400_000
/** A week of baking is what one would not make again (common practice, no source). */
const mostDays = 7

/** Whether it is time for a backup: begun work that is in none, and the last one a week old or never made. */
export function backupDue({ at, begun, houses }: BackupState, now: number): boolean {
  if (!begun && houses === 0) return false
  return at === null || now - at >= mostDays * dayMilliseconds
}
