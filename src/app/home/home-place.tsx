import { lazy, Suspense, useState } from 'react'
import { useLocation } from 'wouter'
import { Choice } from '@/app/kit/field/choice.tsx'
import { TextField } from '@/app/kit/field/text-field.tsx'
import { EmptyState } from '@/app/kit/page/empty-state.tsx'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Progress } from '@/app/kit/page/progress.tsx'
import { Toast } from '@/app/kit/page/toast.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import type { Shelf } from '@/notebook/book-page.ts'
import type { Summary } from '@/notebook/summary-record.ts'
import styles from './home.module.css'
import { linesAtOnce, TrialList } from './trial-list.tsx'
import { useBookPage } from './use-book-page.ts'
import { useDropFiles } from './use-drop-files.ts'
import { useReadIn } from './use-read-in.ts'

/** Below the book, and loaded after it: what passes between notebook and files, and the samples. */
const FileDesk = lazy(async () => ({ default: (await import('./file-desk.tsx')).FileDesk }))
const SampleShelf = lazy(async () => ({
  default: (await import('./sample-shelf.tsx')).SampleShelf,
}))
const HouseShelf = lazy(async () => ({
  default: (await import('./house-shelf.tsx')).HouseShelf,
}))
const EraseDialog = lazy(async () => ({
  default: (await import('./erase-dialog.tsx')).EraseDialog,
}))

const shelves: { value: Shelf; label: string }[] = [
  { value: 'book', label: 'In the book' },
  { value: 'archive', label: 'Archive' },
  { value: 'bin', label: 'Bin' },
]

/** The notebook: all trials, what each asks and where it stands. */
export function HomePlace() {
  const { notebook, newId, now, zone } = useServices()
  const [, go] = useLocation()
  const [search, setSearch] = useState('')
  const [shelf, setShelf] = useState<Shelf>('book')
  const [most, setMost] = useState(linesAtOnce)
  const book = useBookPage({ shelf, search, most })
  const [done, setDone] = useState<{ message: string; undo: () => Promise<void> } | null>(null)
  const [erasing, setErasing] = useState<Summary | null>(null)
  const reading = useReadIn()
  const dropping = useDropFiles(reading.readIn)

  const begin = async () => {
    const { startingPlan } = await import('@/core/plan-edits/start/starting-plan.ts')
    const trialId = await notebook.createTrial(startingPlan({ newId, at: now(), zone }))
    go(`/trial/${trialId}/plan`)
  }
  const erase = async (trialId: string) => {
    // An undo of what was put away before could bring nothing back any more.
    setDone(null)
    await notebook.erase(trialId)
  }

  return (
    <div className={dropping ? styles.dropping : ''}>
      <div className={styles.titleLine}>
        <PageHeading>Notebook</PageHeading>
        {book && book.trials > 0 ? (
          <Button kind="primary" onPress={begin}>
            New trial
          </Button>
        ) : null}
      </div>
      {book === undefined ? <Progress label="Opening the notebook" done={null} /> : null}
      {book?.trials === 0 ? (
        <EmptyState
          title="One question, one thing that changes, and a fair tasting."
          action={
            <Button kind="primary" onPress={begin}>
              New trial
            </Button>
          }
        >
          Start with something you would like to know about your dough, such as how wet it should
          be, or open a sample below to see where a trial leads.
        </EmptyState>
      ) : null}
      {book && book.trials > 0 ? (
        <>
          <div className={styles.finding}>
            <TextField
              label="Search"
              type="search"
              value={search}
              onValue={(text) => {
                setSearch(text)
                setMost(linesAtOnce)
              }}
            />
            {book.putAway ? (
              <Choice
                label="Where to look"
                hideLabel
                row
                value={shelf}
                options={shelves}
                onValue={(chosen) => {
                  setShelf(chosen)
                  setMost(linesAtOnce)
                }}
              />
            ) : null}
          </div>
          <TrialList
            lines={book.lines}
            left={book.left}
            onMore={() => setMost(most + linesAtOnce)}
            onDone={(message, undo) => setDone({ message, undo })}
            onErase={setErasing}
          />
          {book.lines.length === 0 ? (
            <p className={styles.soft} role="status">
              {search ? 'No trial here has all of these words.' : 'Nothing lies here.'}
            </p>
          ) : null}
        </>
      ) : null}
      <Suspense fallback={null}>
        <ErrorBoundary what="the house formulas">
          <HouseShelf />
        </ErrorBoundary>
        <ErrorBoundary what="files and backups">
          <FileDesk reading={reading} />
        </ErrorBoundary>
        <ErrorBoundary what="the sample trials">
          <SampleShelf />
        </ErrorBoundary>
        <EraseDialog summary={erasing} onErase={erase} onClose={() => setErasing(null)} />
      </Suspense>
      {done ? (
        <Toast
          key={done.message}
          message={done.message}
          onClose={() => setDone(null)}
          onUndo={async () => {
            await done.undo()
            setDone(null)
          }}
        />
      ) : null}
    </div>
  )
}
