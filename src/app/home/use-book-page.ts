import { useLiveQuery } from 'dexie-react-hooks'
import { useRef } from 'react'
import { useServices } from '@/app/services/services.ts'
import type { BookPage, BookPageAsked } from '@/notebook/book-page.ts'

/** The lines of a shelf as the notebook has them now; while other ones are read, those before stay on the screen. */
export function useBookPage({ shelf, search, most }: BookPageAsked): BookPage | undefined {
  const { notebook } = useServices()
  const last = useRef<BookPage>(undefined)
  const read = useLiveQuery(
    () => notebook.bookPage({ shelf, search, most }),
    [notebook, shelf, search, most],
  )
  if (read) last.current = read
  return read ?? last.current
}
