import { useEffect, useSyncExternalStore } from 'react'
import { useStore } from 'zustand'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { ErrorNote } from '@/app/kit/page/error-note.tsx'
import { failedWork, forgetFailedWork } from '@/app/kit/page/failed-work.ts'
import { lateComponent } from '@/app/kit/page/late-view.tsx'
import { Notice } from '@/app/kit/page/notice.tsx'
import { Toast } from '@/app/kit/page/toast.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useOpenTables } from '@/app/services/open-tables.ts'
import { useServices } from '@/app/services/services.ts'
import { storageAsked } from '@/app/services/storage-asked.ts'
import { type Unkept, unkept } from '@/app/services/unkept.ts'
import { keepingFailureText } from '@/core/wording/files/keeping-failure-text.ts'
import { ProgramNotes } from './program-notes.tsx'
import { RenewedBackup } from './renewed-backup.tsx'

const TableRunner = lateComponent(
  async () => (await import('@/app/table/table-runner.tsx')).TableRunner,
  null,
)

/** What must be in sight on every page: a notebook that was lost, what could not be kept, what the browser said of its storage. */
export function StandingNotes() {
  return (
    <aside aria-label="Of the notebook itself">
      <NotebookLost />
      <NotKept />
      <StorageAnswer />
      <ProgramNotes />
      <WorkFailed />
      <Tables />
      <RenewedBackup />
    </aside>
  )
}

/** Works the open tables of this device. Nothing of it is loaded where there are none. */
function Tables() {
  const tables = useOpenTables()
  if (!tables || (tables.own.size === 0 && tables.joined.length === 0)) return null
  return (
    <ErrorBoundary what="the open tables" of={tables}>
      <TableRunner />
    </ErrorBoundary>
  )
}

function NotebookLost() {
  const { notebook } = useServices()
  const reason = useSyncExternalStore(notebook.lost.subscribe, notebook.lost.reason)
  if (reason === null) return null
  const { title, kept, mend } = keepingFailureText(reason)
  return (
    <ErrorNote
      title={title}
      action={<Button onPress={() => window.location.reload()}>Reload</Button>}
    >
      {kept} {mend}
    </ErrorNote>
  )
}

function NotKept() {
  const items = useStore(unkept, (state) => state.items)
  useEffect(() => {
    if (items.length === 0) return
    const stay = (event: BeforeUnloadEvent) => event.preventDefault()
    window.addEventListener('beforeunload', stay)
    return () => window.removeEventListener('beforeunload', stay)
  }, [items])
  return items.map((item) => <OneNotKept key={item.key} item={item} />)
}

/** The last press that came to nothing. The page stays as it is: whoever pressed can press again. */
function WorkFailed() {
  const last = useStore(failedWork, (state) => state.last)
  if (last === null) return null
  const { title, kept, mend, press } = keepingFailureText(last.reason)
  const says = last.reason === null ? ` The program says: “${last.detail}”` : ''
  return (
    <Toast
      key={`${last.reason} ${last.detail}`}
      failed
      message={`${title} ${kept} ${mend}${says}`}
      onClose={forgetFailedWork}
      seconds={300}
      {...(press === 'reload'
        ? { onUndo: () => window.location.reload(), undoLabel: 'Reload' }
        : {})}
    />
  )
}

function OneNotKept({ item }: { item: Unkept }) {
  const { title, mend } = keepingFailureText(item.reason)
  return (
    <ErrorNote
      title={`${item.what} could not be kept. ${title}`}
      action={
        <>
          <Button onPress={item.retry}>Try again</Button>{' '}
          <Button kind="quiet" onPress={item.giveUp}>
            Give it up
          </Button>
        </>
      }
    >
      {item.text === '' ? null : (
        <p>
          Not kept: <q>{item.text}</q>
        </p>
      )}
      <p>{mend}</p>
    </ErrorNote>
  )
}

const storageWords = {
  asking:
    'Browsers clear what sites keep when the device runs short of room. Evenhand asks yours to keep this notebook; if it asks you, allow it.',
  kept: 'The browser keeps this notebook even when the device runs short of room. Only clearing the site’s data takes it away: back it up now and then.',
  'not-kept':
    'The browser did not promise to keep this notebook when the device runs short of room. Back it up after each trial day; a bookmark or installing the program may change the browser’s mind.',
}

function StorageAnswer() {
  const answer = useStore(storageAsked, (state) => state.answer)
  if (answer === null) return null
  return (
    <Notice kind="know" title="Keeping your notebook">
      <p>{storageWords[answer]}</p>
      <Button kind="quiet" onPress={() => storageAsked.setState({ answer: null })}>
        Close
      </Button>
    </Notice>
  )
}
