import { useLiveQuery } from 'dexie-react-hooks'
import { useRef } from 'react'
import { useServices } from '@/app/services/services.ts'
import type { BookPage, BookPageAsked, BookSorting } from '@/notebook/book-page.ts'

/** As many lines as a person looks through before searching. More would make every letter that is sought slower to show. */
export const linesAtOnce = 20

/** A page of the book, and what it was asked for: what a person has typed since may be further on. */
export interface AnsweredPage extends BookPage {
  search: string
  sorting: BookSorting
}

/** The lines of a shelf as the notebook has them now; while other ones are read, those before stay on the screen. */
export function useBookPage({
  shelf,
  search,
  most,
  sorting,
}: BookPageAsked & { sorting: BookSorting }): AnsweredPage | undefined {
  const { notebook } = useServices()
  const last = useRef<AnsweredPage>(undefined)
  const read = useLiveQuery(
    () =>
      notebook
        .bookPage({ shelf, search, most, sorting })
        .then((page) => ({ ...page, search, sorting })),
    [notebook, shelf, search, most, sorting],
  )
  if (read) last.current = read
  return read ?? last.current
}
