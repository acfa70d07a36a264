import { lazy, Suspense, useState } from 'react'
import { useLocation } from 'wouter'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Progress } from '@/app/kit/page/progress.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import { type Shelf, wholeBook } from '@/notebook/book-page.ts'
import type { Summary } from '@/notebook/summary-record.ts'
import styles from './home.module.css'
import { linesAtOnce, useBookPage } from './use-book-page.ts'
import { useDropFiles } from './use-drop-files.ts'
import { useReadIn } from './use-read-in.ts'

/** Loaded once there is a trial: an empty notebook opens without it. */
const Book = lazy(async () => ({ default: (await import('./book.tsx')).Book }))
/** Below the book, and loaded after it: what passes between notebook and files, and the samples. */
const FileDesk = lazy(async () => ({ default: (await import('./file-desk.tsx')).FileDesk }))
const SampleShelf = lazy(async () => ({
  default: (await import('./sample-shelf.tsx')).SampleShelf,
}))
const ChainShelf = lazy(async () => ({
  default: (await import('./chain-shelf.tsx')).ChainShelf,
}))
const HouseShelf = lazy(async () => ({
  default: (await import('./house-shelf.tsx')).HouseShelf,
}))
const Toast = lazy(async () => ({ default: (await import('@/app/kit/page/toast.tsx')).Toast }))
const EraseDialog = lazy(async () => ({
  default: (await import('./erase-dialog.tsx')).EraseDialog,
}))

/** The notebook: all trials, what each asks and where it stands. */
export function HomePlace() {
  const { notebook } = useServices()
  const [, go] = useLocation()
  const [search, setSearch] = useState('')
  const [shelf, setShelf] = useState<Shelf>('book')
  const [sorting, setSorting] = useState(wholeBook)
  const [most, setMost] = useState(linesAtOnce)
  const book = useBookPage({ shelf, search, most, sorting })
  const [done, setDone] = useState<{ message: string; undo: () => Promise<void> } | null>(null)
  const [erasing, setErasing] = useState<Summary | null>(null)
  const reading = useReadIn()
  const dropping = useDropFiles(reading.readIn)

  const begin = () => go('/new')
  const erase = async (trialId: string) => {
    // An undo of what was put away before could bring nothing back any more.
    setDone(null)
    await notebook.erase(trialId)
  }

  return (
    <div className={dropping ? styles.dropping : ''}>
      <div className={styles.hidden}>
        <PageHeading>Notebook</PageHeading>
      </div>
      {book === undefined ? <Progress label="Opening the notebook" done={null} /> : null}
      {book?.trials === 0 ? (
        <div className={styles.empty}>
          <p className={styles.headline}>One question, one thing that changes, a fair tasting.</p>
          <p className={styles.lead}>
            Ask something you would like to know about your dough, or open a sample to see where a
            trial leads.
          </p>
          <Button kind="primary" onPress={begin}>
            New trial
          </Button>
        </div>
      ) : null}
      {book && book.trials > 0 ? (
        <Suspense fallback={<Progress label="Opening the notebook" done={null} />}>
          <Book
            book={book}
            search={search}
            shelf={shelf}
            sorting={sorting}
            onSearch={(text) => {
              setSearch(text)
              setMost(linesAtOnce)
            }}
            onShelf={(chosen) => {
              setShelf(chosen)
              setMost(linesAtOnce)
            }}
            onSorting={(chosen) => {
              setSorting(chosen)
              setMost(linesAtOnce)
            }}
            onMore={() => setMost(most + linesAtOnce)}
            onBegin={begin}
            onDone={(message, undo) => setDone({ message, undo })}
            onErase={setErasing}
          />
        </Suspense>
      ) : null}
      <Suspense fallback={null}>
        <ErrorBoundary what="the lines of questions">
          <ChainShelf />
        </ErrorBoundary>
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
        <Suspense fallback={null}>
          <Toast
            key={done.message}
            message={done.message}
            onClose={() => setDone(null)}
            onUndo={async () => {
              await done.undo()
              setDone(null)
            }}
          />
        </Suspense>
      ) : null}
    </div>
  )
}
