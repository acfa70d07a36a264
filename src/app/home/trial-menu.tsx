import { useState } from 'react'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { lateComponent } from '@/app/kit/page/late-view.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { saveFile } from '@/app/kit/press/save-file.ts'
import { useServices } from '@/app/services/services.ts'
import type { Summary } from '@/notebook/summary-record.ts'
import styles from './home.module.css'
import { shelfWords } from './shelf-words.ts'
import { titleOf } from './stage-words.ts'

/** Loaded when it is asked for: the book opens without it. */
const ExportDialog = lateComponent(
  async () => (await import('./export-dialog.tsx')).ExportDialog,
  null,
)

type Undo = () => Promise<void>

export interface TrialMenuProps {
  summary: Summary
  /** Moves it to another shelf: what that is called, how it is done and how it is taken back. */
  onMove: (summary: Summary, words: string, move: () => Promise<void>, back: Undo) => Promise<void>
  onErase: (summary: Summary) => void
}

/** What can be done with a trial as a whole. Putting away can be undone at once; erasing asks first. */
export function TrialMenu({ summary, onMove, onErase }: TrialMenuProps) {
  const { notebook } = useServices()
  const { trialId, archived, binned } = summary
  // Counted, so that a further press asks anew where the question could not be fetched.
  const [asked, setAsked] = useState(0)
  const move = (how: 'archive' | 'bin', to: boolean) =>
    onMove(
      summary,
      to ? shelfWords[how] : 'Back in the book',
      () => notebook[how](trialId, to),
      () => notebook[how](trialId, !to),
    )
  const save = async () => {
    const { name, text } = await notebook.exportTrial(trialId)
    saveFile(name, text, 'application/json')
  }
  const ask = summary.sealed ? () => setAsked(asked + 1) : save
  const press = (words: string, onPress: () => unknown) => (
    <Button kind="quiet" size="small" label={`${words}: ${titleOf(summary)}`} onPress={onPress}>
      {words}
    </Button>
  )
  return (
    <div className={styles.menu}>
      {binned ? (
        <>
          {press('Take back', () => move('bin', false))}
          {press('Erase for good', () => onErase(summary))}
        </>
      ) : (
        <>
          {press('Export', ask)}
          {press(archived ? 'Take back' : 'Put away', () => move('archive', !archived))}
          {press('Throw out', () => move('bin', true))}
        </>
      )}
      {asked > 0 ? (
        <ErrorBoundary what="the question before an export" of={asked}>
          <ExportDialog onExport={save} onClose={() => setAsked(0)} />
        </ErrorBoundary>
      ) : null}
    </div>
  )
}
