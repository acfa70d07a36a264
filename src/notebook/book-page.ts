import { coveredTrials } from '@/core/lesson/covered-trials.ts'
import { keptAnswer } from '@/core/record/kept-answer.ts'
import { type BookOrder, inOrder, newestFirst } from './book-order.ts'
import { storedSettings } from './next-counts.ts'
import type { Store } from './store.ts'
import { allLines, summariesMissing, summaryNow } from './stored-summaries.ts'
import type { Summary } from './summary-record.ts'

export type Shelf = 'book' | 'archive' | 'bin'

/** Where a trial lies; binned counts before archived. */
export function shelfOf({ binned, archived }: Pick<Summary, 'binned' | 'archived'>): Shelf {
  if (binned) return 'bin'
  return archived ? 'archive' : 'book'
}

/** Where trials stand, as a person sorts them out: what goes on is under way, whatever its codes. */
export type BookState = 'planning' | 'under-way' | 'between' | 'answered'

const stagesOf: Readonly<Record<BookState, readonly Summary['stage'][]>> = {
  planning: ['planning'],
  'under-way': ['working', 'tasting', 'sealed'],
  between: ['between'],
  answered: ['answered'],
}

/** The shelf a trial lies on now; null where it is here no more. Only reads. */
export async function shelfNow(store: Store, trialId: string): Promise<Shelf | null> {
  const trial = await store.trials.get(trialId)
  if (!trial) return null
  return shelfOf({
    binned: trial.binnedAt !== undefined,
    archived: trial.archivedAt !== undefined,
  })
}

/** Which lines are wanted, each part null for all, and in what order. */
export interface BookSorting {
  factorKind: string | null
  state: BookState | null
  flour: string | null
  order: BookOrder
}

export const wholeBook: BookSorting = {
  ...{ factorKind: null, state: null, flour: null, order: 'worked' },
}

export interface BookPageAsked {
  shelf: Shelf
  /** Every word of it stands in question, factor, answer (unless a lesson covers it), flours or notes, in any order and case; '' finds all. */
  search: string
  /** Left out: all lines, newest work first. */
  sorting?: BookSorting
  /** As many lines are read at most. */
  most: number
}

/** The first lines of a shelf, newest work first unless asked otherwise. */
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
 * A search, a filter or another order reads all lines, and checks those it shows. Only reads, so that a live query may use it.
 */
export function bookPage(
  store: Store,
  { shelf, search, most, sorting = wholeBook }: BookPageAsked,
): Promise<BookPage> {
  return store.transaction('r', store.tables, async () => {
    const words = search.toLowerCase().split(/\s+/).filter(Boolean)
    const all = words.length === 0 && isWhole(sorting)
    const onShelf = (line: Summary) => shelfOf(line) === shelf && fits(line, sorting)
    const [trials, counted, fresh, kept, lessons] = await Promise.all([
      store.trials.count(),
      countShelves(store),
      summariesMissing(store),
      all ? newest(store, onShelf, most) : allLines(store),
      words.length > 0 ? lessonsUnderWay(store) : [],
    ])
    const ids = lessons.length === 0 ? [] : [...kept, ...fresh].map(({ trialId }) => trialId)
    const covered = new Set(coveredTrials(ids, lessons))
    const wanted = (line: Summary) =>
      onShelf(line) && hasWords(line, !covered.has(line.trialId), words)
    const found = [...kept.filter(wanted), ...fresh.filter(wanted)].toSorted(inOrder[sorting.order])
    const shown = await Promise.all(found.slice(0, most).map((line) => summaryNow(store, line)))
    const inAll = all ? counted[shelf](trials) : found.length
    return {
      lines: shown.filter((line) => line !== undefined),
      left: Math.max(0, inAll - most),
      trials,
      putAway: counted.book(trials) < trials,
    }
  })
}

/** Whether every line is wanted, newest work first. */
export function isWhole({ factorKind, state, flour, order }: BookSorting): boolean {
  return factorKind === null && state === null && flour === null && order === 'worked'
}

function fits(line: Summary, { factorKind, state, flour }: BookSorting): boolean {
  return (
    (factorKind === null || line.factorKind === factorKind) &&
    (state === null || stagesOf[state].includes(line.stage)) &&
    (flour === null || (line.flours ?? []).includes(flour))
  )
}

/** What the book can be sorted out by: kinds of factor and flours that some trial has; a covered trial tells no flour. */
export interface BookChoices {
  factorKinds: string[]
  flours: string[]
}

/** What of kinds and flours the lines of the notebook hold, in the order of the alphabet. */
export async function bookChoices(store: Store): Promise<BookChoices> {
  const lines = await linesNow(store)
  const sorted = (names: readonly (string | undefined)[]) =>
    [...new Set(names.filter((name) => name !== undefined))].toSorted((one, other) =>
      one.localeCompare(other, 'en'),
    )
  return {
    factorKinds: sorted(lines.map(({ factorKind }) => factorKind)),
    flours: sorted(lines.flatMap(({ flours = [] }) => flours)),
  }
}

/** Reads what a search will read, and puts together what it looks through: ahead of its first letter. Only reads. */
export async function readySearch(store: Store): Promise<void> {
  for (const line of await linesNow(store)) searchedText(line, true)
}

/** All lines: those that are stored, and those of the trials that have none. */
function linesNow(store: Store): Promise<Summary[]> {
  return store.transaction('r', store.tables, async () => [
    ...(await allLines(store)),
    ...(await summariesMissing(store)),
  ])
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

async function lessonsUnderWay(store: Store): Promise<readonly string[]> {
  return (await storedSettings(store)).lessons ?? []
}

const hasWords = (line: Partial<Summary>, tellsAnswer: boolean, words: readonly string[]) =>
  words.every((word) => searchedText(line, tellsAnswer).includes(word))

/** A line as it is stored is not checked yet: what it lacks has no words. Put together once for the letters of one search. */
const searchedText = keptAnswer((line: Partial<Summary>, tellsAnswer: boolean): string => {
  const { question, factorName, answer, flours = [], notes } = line
  const told = tellsAnswer ? answer : undefined
  return [question, factorName, told, ...flours, notes].join(' ').toLowerCase()
})

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
