import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import type { Summary } from '@/notebook/summary-record.ts'
import styles from './home.module.css'
import { TrialLine } from './trial-line.tsx'
import type { TrialMenuProps } from './trial-menu.tsx'
import { linesAtOnce } from './use-book-page.ts'

interface TrialListProps extends Omit<TrialMenuProps, 'summary'> {
  lines: readonly Summary[]
  /** What is looked for; a line says where else than in its question it was found. */
  search: string
  /** How many more there are. */
  left: number
  onMore: () => void
}

/** The trials found, newest first: the first lines, and the next ones at a press. */
export function TrialList({ lines, search, left, onMore, ...acts }: TrialListProps) {
  return (
    <>
      <ul className={styles.book} aria-label="Trials">
        {lines.map((summary) => (
          <ErrorBoundary key={summary.trialId} what="this line" of={summary}>
            <TrialLine summary={summary} search={search} {...acts} />
          </ErrorBoundary>
        ))}
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
}
