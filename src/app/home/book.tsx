import { Choice } from '@/app/kit/field/choice.tsx'
import { TextField } from '@/app/kit/field/text-field.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import type { BookPage, Shelf } from '@/notebook/book-page.ts'
import styles from './home.module.css'
import { TrialList } from './trial-list.tsx'
import type { TrialMenuProps } from './trial-menu.tsx'

const shelves: { value: Shelf; label: string }[] = [
  { value: 'book', label: 'In the book' },
  { value: 'archive', label: 'Put away' },
  { value: 'bin', label: 'Thrown out' },
]

interface BookProps extends Pick<TrialMenuProps, 'onDone' | 'onErase'> {
  book: BookPage
  search: string
  shelf: Shelf
  onSearch: (text: string) => void
  onShelf: (shelf: Shelf) => void
  onMore: () => void
  onBegin: () => void
}

/** The trials of the notebook, found by their words, and what was put away. */
export function Book(props: BookProps) {
  const { book, search, shelf, onSearch, onShelf, onMore, onBegin, onDone, onErase } = props
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
      <TrialList
        lines={book.lines}
        left={book.left}
        onMore={onMore}
        onDone={onDone}
        onErase={onErase}
      />
      {book.lines.length === 0 ? (
        <p className={styles.soft} role="status">
          {search ? 'No trial here has all of these words.' : 'Nothing lies here.'}
        </p>
      ) : null}
    </>
  )
}
