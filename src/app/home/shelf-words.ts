import type { Shelf } from '@/notebook/book-page.ts'

/** What the places are called where a trial may lie. */
export const shelfWords: Record<Shelf, string> = {
  book: 'In the book',
  archive: 'Put away',
  bin: 'Thrown out',
}
