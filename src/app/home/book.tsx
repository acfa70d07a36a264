import { TextField } from '@/app/kit/field/text-field.tsx'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { lateComponent } from '@/app/kit/page/late-view.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { landing } from '@/app/kit/press/keep-focus.ts'
import { type BookSorting, isWhole, type Shelf } from '@/notebook/book-page.ts'
import styles from './home.module.css'
import type { Moved } from './moved-line.tsx'
import { ReadySearch } from './ready-search.tsx'
import { shelfWords } from './shelf-words.ts'
import { SortBook } from './sort-book.tsx'
import { TrialList } from './trial-list.tsx'
import type { TrialMenuProps } from './trial-menu.tsx'
import type { AnsweredPage } from './use-book-page.ts'

/** Fetched behind the book: what finds the answers that are not written beside their trials yet. */
const BookAnswers = lateComponent(
  async () => (await import('./book-answers.tsx')).BookAnswers,
  null,
)

/** A notebook of fewer trials is read faster than it is sorted out. */
const worthSorting = 3

interface BookProps extends Pick<TrialMenuProps, 'onMove' | 'onErase'> {
  book: AnsweredPage
  search: string
  shelf: Shelf
  sorting: BookSorting
  moved: readonly Moved[]
  onSearch: (text: string) => void
  onSorting: (sorting: BookSorting) => void
  /** Back to the trials that are in the book. */
  onBack: () => void
  onMore: () => void
  onBegin: () => void
}

/** The trials of the notebook, found by their words, and what was put away. */
export function Book(props: BookProps) {
  const { book, search, shelf, sorting, moved, onSearch, onSorting, onBack } = props
  const { onMore, onBegin, onMove, onErase } = props
  return (
    <>
      <div className={styles.finding}>
        <TextField label="Search" type="search" value={search} onValue={onSearch} />
        <Button kind="primary" onPress={onBegin}>
          New trial
        </Button>
      </div>
      {book.trials >= worthSorting ? <SortBook sorting={sorting} onSorting={onSorting} /> : null}
      {shelf === 'book' ? null : (
        <div className={styles.shelf}>
          <h2 {...landing}>{shelfWords[shelf]}</h2>
          <Button onPress={onBack}>Back to the book</Button>
        </div>
      )}
      <ErrorBoundary what="the search of the book">
        <ReadySearch />
      </ErrorBoundary>
      <ErrorBoundary what="the answers of the book">
        <BookAnswers lines={book.lines} />
      </ErrorBoundary>
      <TrialList
        lines={book.lines}
        search={book.search}
        order={book.sorting.order}
        moved={moved}
        left={book.left}
        onMore={onMore}
        onMove={onMove}
        onErase={onErase}
      />
      {book.lines.length === 0 && moved.length === 0 ? (
        <p className={styles.soft} role="status">
          {emptyWords(book)}
        </p>
      ) : null}
    </>
  )
}

function emptyWords({ search, sorting }: AnsweredPage): string {
  if (!isWhole({ ...sorting, order: 'worked' }))
    return search
      ? 'No trial here has all of these words and is of what was chosen.'
      : 'No trial here is of what was chosen.'
  return search ? 'No trial here has all of these words.' : 'Nothing lies here.'
}
