import { lazy, Suspense } from 'react'
import { Choice } from '@/app/kit/field/choice.tsx'
import { TextField } from '@/app/kit/field/text-field.tsx'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { type BookPage, type BookSorting, isWhole, type Shelf } from '@/notebook/book-page.ts'
import styles from './home.module.css'
import { SortBook } from './sort-book.tsx'
import { TrialList } from './trial-list.tsx'
import type { TrialMenuProps } from './trial-menu.tsx'

/** Fetched behind the book: what finds the answers that are not written beside their trials yet. */
const BookAnswers = lazy(async () => ({
  default: (await import('./book-answers.tsx')).BookAnswers,
}))

/** A notebook of fewer trials is read faster than it is sorted out. */
const worthSorting = 3

const shelves: { value: Shelf; label: string }[] = [
  { value: 'book', label: 'In the book' },
  { value: 'archive', label: 'Put away' },
  { value: 'bin', label: 'Thrown out' },
]

interface BookProps extends Pick<TrialMenuProps, 'onDone' | 'onErase'> {
  book: BookPage
  search: string
  shelf: Shelf
  sorting: BookSorting
  onSearch: (text: string) => void
  onShelf: (shelf: Shelf) => void
  onSorting: (sorting: BookSorting) => void
  onMore: () => void
  onBegin: () => void
}

/** The trials of the notebook, found by their words, and what was put away. */
export function Book(props: BookProps) {
  const { book, search, shelf, sorting, onSearch, onShelf, onSorting, onMore, onBegin } = props
  const { onDone, onErase } = props
  return (
    <>
      <div className={styles.finding}>
        <TextField label="Search" type="search" value={search} onValue={onSearch} />
        <Button kind="primary" onPress={onBegin}>
          New trial
        </Button>
        {book.putAway ? (
          <Choice
            label="Where to look"
            hideLabel
            row
            value={shelf}
            options={shelves}
            onValue={onShelf}
          />
        ) : null}
      </div>
      {book.trials >= worthSorting ? <SortBook sorting={sorting} onSorting={onSorting} /> : null}
      <Suspense fallback={null}>
        <ErrorBoundary what="the answers of the book">
          <BookAnswers lines={book.lines} />
        </ErrorBoundary>
      </Suspense>
      <TrialList
        lines={book.lines}
        search={search}
        left={book.left}
        onMore={onMore}
        onDone={onDone}
        onErase={onErase}
      />
      {book.lines.length === 0 ? (
        <p className={styles.soft} role="status">
          {emptyWords(search, sorting)}
        </p>
      ) : null}
    </>
  )
}

function emptyWords(search: string, sorting: BookSorting): string {
  if (!isWhole({ ...sorting, order: 'worked' }))
    return search
      ? 'No trial here has all of these words and is of what was chosen.'
      : 'No trial here is of what was chosen.'
  return search ? 'No trial here has all of these words.' : 'Nothing lies here.'
}
