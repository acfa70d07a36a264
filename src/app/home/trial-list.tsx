import { memo, useCallback, useState } from 'react'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { type BookOrder, inOrder } from '@/notebook/book-order.ts'
import type { Summary } from '@/notebook/summary-record.ts'
import styles from './home.module.css'
import { FetchPictures } from './late-picture.tsx'
import { type Moved, MovedLine } from './moved-line.tsx'
import { TrialLine } from './trial-line.tsx'
import type { TrialMenuProps } from './trial-menu.tsx'
import { linesAtOnce } from './use-book-page.ts'

interface TrialListProps extends Omit<TrialMenuProps, 'summary'> {
  lines: readonly Summary[]
  /** What is looked for; a line says where else than in its question it was found. */
  search: string
  order: BookOrder
  /** Rows that have just gone elsewhere: they keep their places. */
  moved: readonly Moved[]
  /** How many more there are. */
  left: number
  onMore: () => void
}

/** The trials found, newest first: the first lines, and the next ones at a press. A letter that is typed into the search is painted without them. */
export const TrialList = memo(function TrialList(props: TrialListProps) {
  const { lines, search, order, moved, left, onMore, ...acts } = props
  const [, setPictured] = useState(false)
  const onPictures = useCallback(() => setPictured(true), [])
  const here = new Set(lines.map(({ trialId }) => trialId))
  const gone = moved.filter(({ summary }) => !here.has(summary.trialId))
  const movedOf = new Map(gone.map((each) => [each.summary.trialId, each]))
  const rows = [...lines, ...gone.map(({ summary }) => summary)].toSorted(inOrder[order])
  return (
    <>
      <ErrorBoundary what="the pictures of the levels">
        <FetchPictures onHere={onPictures} />
      </ErrorBoundary>
      <ul className={styles.book} aria-label="Trials">
        {rows.map((summary) => {
          const gone = movedOf.get(summary.trialId)
          return (
            <ErrorBoundary key={summary.trialId} what="this line" of={summary}>
              {gone ? (
                <MovedLine moved={gone} />
              ) : (
                <TrialLine summary={summary} search={search} {...acts} />
              )}
            </ErrorBoundary>
          )
        })}
      </ul>
      {left > 0 ? (
        <p>
          <Button kind="quiet" onPress={onMore}>
            {left > linesAtOnce
              ? `The next ${linesAtOnce} of ${left.toLocaleString('en')} more`
              : `The last ${left}`}
          </Button>
        </p>
      ) : null}
    </>
  )
})
