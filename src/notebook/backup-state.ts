import type { Store } from './store.ts'
import { summariesMissing } from './stored-summaries.ts'
import type { Summary } from './summary-record.ts'

/** How the notebook stands to its last backup. */
export interface BackupState {
  /** When the last backup of this device was begun; null while there was none. */
  at: number | null
  /** Trials with work that is newer than that, and house formulas; samples that were only opened do not count. */
  trials: number
  houses: number
  /** Whether any of these trials was begun: a plan alone is soon made again. */
  begun: boolean
}

const key = 'last-backup'

/** By index and keys: of a notebook of thousands no trial is read. Only reads, so that a live query may use it. */
export function backupState(store: Store): Promise<BackupState> {
  return store.transaction('r', store.tables, async () => {
    const [last, settings] = await Promise.all([
      store.drafts.get(key),
      store.settings.get('settings'),
    ])
    const at = Number(last?.values.at ?? Number.NaN)
    const since = Number.isFinite(at) ? at : 0
    const opened =
      settings && 'openedSamples' in settings ? Object.values(settings.openedSamples ?? {}) : []
    const wanted = (line: Summary) => line.lastAt > since && !opened.includes(line.trialId)
    const kept = store.summaries.where('lastAt').above(since).and(wanted)
    const fresh = (await summariesMissing(store)).filter(wanted)
    const begun = (line: Summary) => line.stage !== 'planning'
    const houses = await store.houses.toArray()
    return {
      at: Number.isFinite(at) ? at : null,
      trials: (await kept.count()) + fresh.length,
      houses: houses.filter(({ revisions }) => revisions.some((one) => one.at > since)).length,
      begun: fresh.some(begun) || (await kept.clone().and(begun).count()) > 0,
    }
  })
}

/** Writes down that a backup begun at this moment is in somebody's hands. */
export async function keepBackedUp(store: Store, at: number): Promise<void> {
  await store.drafts.put({ key, values: { at: String(at) } })
}

const dayMilliseconds = 86_400_000
/** A week of baking is what one would not make again (common practice, no source). */
const mostDays = 7

/** Whether it is time for a backup: begun work that is in none, and the last one a week old or never made. */
export function backupDue({ at, begun, houses }: BackupState, now: number): boolean {
  if (!begun && houses === 0) return false
  return at === null || now - at >= mostDays * dayMilliseconds
}
