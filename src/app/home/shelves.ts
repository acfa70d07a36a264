import type { Summary } from '@/notebook/summary-record.ts'
import { titleOf } from './stage-words.ts'

export type Shelf = 'book' | 'archive' | 'bin'

/** The trials of one shelf that a search finds: every word of it, in question or factor, in any order and case. */
export function trialsOnShelf(
  summaries: readonly Summary[],
  shelf: Shelf,
  search: string,
): Summary[] {
  const sought = search.toLowerCase().split(/\s+/).filter(Boolean)
  return summaries.filter((summary) => {
    const text = `${titleOf(summary)} ${summary.factorName}`.toLowerCase()
    return shelfOf(summary) === shelf && sought.every((word) => text.includes(word))
  })
}

/** Where a trial lies; binned counts before archived. */
export function shelfOf({ binned, archived }: Pick<Summary, 'binned' | 'archived'>): Shelf {
  if (binned) return 'bin'
  return archived ? 'archive' : 'book'
}
