import { useLiveQuery } from 'dexie-react-hooks'
import { useRef } from 'react'
import { useServices } from '@/app/services/services.ts'
import type { BookPage, BookPageAsked, BookSorting } from '@/notebook/book-page.ts'

/** As many lines as a person looks through before searching. More would make every letter that is sought slower to show. */
export const linesAtOnce = 20

/** The lines of a shelf as the notebook has them now; while other ones are read, those before stay on the screen. */
export function useBookPage({
  shelf,
  search,
  most,
  sorting,
}: BookPageAsked & { sorting: BookSorting }): BookPage | undefined {
  const { notebook } = useServices()
  const last = useRef<BookPage>(undefined)
  const read = useLiveQuery(
    () => notebook.bookPage({ shelf, search, most, sorting }),
    [notebook, shelf, search, most, sorting],
  )
  if (read) last.current = read
  return read ?? last.current
}
