import { useCallback, useMemo, useState } from 'react'
import { useLocation } from 'wouter'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { lateComponent } from '@/app/kit/page/late-view.tsx'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Progress } from '@/app/kit/page/progress.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import { type Shelf, wholeBook } from '@/notebook/book-page.ts'
import type { Summary } from '@/notebook/summary-record.ts'
import styles from './home.module.css'
import type { Moved } from './moved-line.tsx'
import { shelfWords } from './shelf-words.ts'
import type { TrialMenuProps } from './trial-menu.tsx'
import { linesAtOnce, useBookPage } from './use-book-page.ts'
import { useDropFiles } from './use-drop-files.ts'
import { useReadIn } from './use-read-in.ts'

/** Loaded once there is a trial: an empty notebook opens without it. */
const Book = lateComponent(
  async () => (await import('./book.tsx')).Book,
  <Progress label="Opening the notebook" done={null} />,
)
/** Below the book, and loaded after it: what passes between notebook and files, and the samples. */
const FileDesk = lateComponent(async () => (await import('./file-desk.tsx')).FileDesk, null)
const SampleShelf = lateComponent(
  async () => (await import('./sample-shelf.tsx')).SampleShelf,
  null,
)
const ChainShelf = lateComponent(async () => (await import('./chain-shelf.tsx')).ChainShelf, null)
const HouseShelf = lateComponent(async () => (await import('./house-shelf.tsx')).HouseShelf, null)
const BackupReminder = lateComponent(
  async () => (await import('./backup-reminder.tsx')).BackupReminder,
  null,
)
const EraseDialog = lateComponent(
  async () => (await import('./erase-dialog.tsx')).EraseDialog,
  null,
)

/** The notebook: all trials, what each asks and where it stands. */
export function HomePlace() {
  const { notebook } = useServices()
  const [, go] = useLocation()
  const [search, setSearch] = useState('')
  const [shelf, setShelf] = useState<Shelf>('book')
  const [sorting, setSorting] = useState(wholeBook)
  const [most, setMost] = useState(linesAtOnce)
  const book = useBookPage({ shelf, search, most, sorting })
  const [moved, setMoved] = useState<readonly Moved[]>([])
  const [erasing, setErasing] = useState<Summary | null>(null)
  const reading = useReadIn()
  const dropping = useDropFiles(reading.readIn)

  const begin = () => go('/new')
  const lookOn = useCallback((chosen: Shelf) => {
    setShelf(chosen)
    setMost(linesAtOnce)
    setMoved([])
  }, [])
  const away = book?.putAway ?? false
  const shelves = useMemo(
    () =>
      (away ? (['archive', 'bin'] as const) : []).map((each) => ({
        words: shelfWords[each],
        act: () => lookOn(each),
      })),
    [away, lookOn],
  )
  const forget = useCallback(
    (trialId: string) =>
      setMoved((before) => before.filter(({ summary }) => summary.trialId !== trialId)),
    [],
  )
  const move = useCallback<TrialMenuProps['onMove']>(
    async (summary, words, there, back) => {
      const { trialId } = summary
      // Before it goes, so that its row gives way to the undo and nothing else; as soon as it is back its row stands again.
      setMoved((before) => [
        ...before.filter((each) => each.summary.trialId !== trialId),
        { summary, words, undo: back },
      ])
      await there().catch((cause: unknown) => {
        forget(trialId)
        throw cause
      })
    },
    [forget],
  )
  // Anew each time: a further press asks again where the question could not be fetched.
  const askToErase = useCallback((summary: Summary) => setErasing({ ...summary }), [])
  const more = useCallback(() => setMost((before) => before + linesAtOnce), [])
  const erase = async (trialId: string) => {
    const erased = await notebook.erase(trialId)
    // An undo of what was put away before could bring nothing back any more.
    if (erased) forget(trialId)
    return erased
  }
  const shown = new Set(book?.lines.map(({ trialId }) => trialId))

  return (
    <div className={dropping ? styles.dropping : ''}>
      <div className={styles.hidden}>
        <PageHeading>Notebook</PageHeading>
      </div>
      <ErrorBoundary what="files and backups">
        <FileDesk reading={reading} shelves={shelves} />
      </ErrorBoundary>
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
        <ErrorBoundary what="the book">
          <Book
            book={book}
            search={search}
            shelf={shelf}
            sorting={sorting}
            moved={moved}
            onSearch={(text) => {
              setSearch(text)
              setMost(linesAtOnce)
              setMoved([])
            }}
            onSorting={(chosen) => {
              setSorting(chosen)
              setMost(linesAtOnce)
              setMoved([])
            }}
            onBack={() => lookOn('book')}
            onMore={more}
            onBegin={begin}
            onMove={move}
            onErase={askToErase}
          />
        </ErrorBoundary>
      ) : null}
      <ErrorBoundary what="the lines of questions">
        <ChainShelf />
      </ErrorBoundary>
      <ErrorBoundary what="the house formulas">
        <HouseShelf />
      </ErrorBoundary>
      <ErrorBoundary what="what is in no backup yet">
        <BackupReminder />
      </ErrorBoundary>
      {search === '' && shelf === 'book' ? (
        <ErrorBoundary what="the sample trials">
          <SampleShelf shown={shown} />
        </ErrorBoundary>
      ) : null}
      {erasing ? (
        <ErrorBoundary what="the question before erasing" of={erasing}>
          <EraseDialog summary={erasing} onErase={erase} onClose={() => setErasing(null)} />
        </ErrorBoundary>
      ) : null}
    </div>
  )
}
