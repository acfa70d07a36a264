import type { Store } from './store.ts'
import { summariesMissing, summaryNow } from './stored-summaries.ts'
import type { Summary } from './summary-record.ts'

export type Shelf = 'book' | 'archive' | 'bin'

/** Where a trial lies; binned counts before archived. */
export function shelfOf({ binned, archived }: Pick<Summary, 'binned' | 'archived'>): Shelf {
  if (binned) return 'bin'
  return archived ? 'archive' : 'book'
}

export interface BookPageAsked {
  shelf: Shelf
  /** Every word of it stands in question or factor, in any order and case; '' finds all. */
  search: string
  /** As many lines are read at most. */
  most: number
}

/** The first lines of a shelf, newest work first. */
export interface BookPage {
  lines: Summary[]
  /** How many more there are. */
  left: number
  /** How many trials the notebook holds on all shelves. */
  trials: number
  /** Whether anything lies in archive or bin. */
  putAway: boolean
}

/**
 * The first lines of one shelf: of a notebook of thousands only these are read and checked, the rest is counted by index.
 * A search reads all lines, and checks those it shows. Only reads, so that a live query may use it.
 */
export function bookPage(store: Store, { shelf, search, most }: BookPageAsked): Promise<BookPage> {
  return store.transaction('r', store.tables, async () => {
    const words = search.toLowerCase().split(/\s+/).filter(Boolean)
    const wanted = (line: Summary) => shelfOf(line) === shelf && hasWords(line, words)
    const [trials, counted, fresh] = await Promise.all([
      store.trials.count(),
      countShelves(store),
      summariesMissing(store),
    ])
    const kept = words.length > 0 ? await allNewest(store) : await newest(store, wanted, most)
    const found = [...kept.filter(wanted), ...fresh.filter(wanted)].toSorted(newestFirst)
    const shown = await Promise.all(found.slice(0, most).map((line) => summaryNow(store, line)))
    const all = words.length > 0 ? found.length : counted[shelf](trials)
    return {
      lines: shown.filter((line) => line !== undefined),
      left: Math.max(0, all - most),
      trials,
      putAway: counted.book(trials) < trials,
    }
  })
}

/** The newest trials that something was made of and whose codes are not kept, archived ones too; ids. */
export function newestBegun(store: Store, most: number): Promise<string[]> {
  return store.transaction('r', store.tables, async () => {
    const wanted = (line: Summary) => line.stage !== 'planning' && !line.sealed && !line.binned
    const fresh = await summariesMissing(store)
    const kept = await newest(store, wanted, most)
    return [...kept, ...fresh.filter(wanted)]
      .toSorted(newestFirst)
      .slice(0, most)
      .map(({ trialId }) => trialId)
  })
}

function newest(store: Store, wanted: (line: Summary) => boolean, most: number) {
  return store.summaries.orderBy('lastAt').reverse().filter(wanted).limit(most).toArray()
}

/** In one piece: thousands of lines one by one take the database many times as long. */
async function allNewest(store: Store): Promise<Summary[]> {
  return await store.summaries.toArray()
}

function newestFirst(a: Summary, b: Summary): number {
  return b.lastAt - a.lastAt || (a.trialId < b.trialId ? -1 : 1)
}

/** A line as it is stored is not checked yet: what it lacks has no words. */
function hasWords({ question, factorName }: Partial<Summary>, words: readonly string[]): boolean {
  const text = `${question} ${factorName}`.toLowerCase()
  return words.every((word) => text.includes(word))
}

/** How many trials lie on each shelf, of so many in all. */
async function countShelves(store: Store): Promise<Record<Shelf, (trials: number) => number>> {
  const [archived, binned] = await Promise.all([
    store.trials.where('archivedAt').above(0).primaryKeys(),
    store.trials.where('binnedAt').above(0).primaryKeys(),
  ])
  const inBin = new Set(binned)
  const inArchive = archived.filter((id) => !inBin.has(id)).length
  return {
    bin: () => inBin.size,
    archive: () => inArchive,
    book: (trials) => trials - inBin.size - inArchive,
  }
}
