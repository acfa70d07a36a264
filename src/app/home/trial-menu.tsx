import { lazy, Suspense, useState } from 'react'
import { Button } from '@/app/kit/press/button.tsx'
import { saveFile } from '@/app/kit/press/save-file.ts'
import { useServices } from '@/app/services/services.ts'
import type { Summary } from '@/notebook/summary-record.ts'
import styles from './home.module.css'
import { shelfWords } from './shelf-words.ts'
import { titleOf } from './stage-words.ts'

/** Loaded when it is asked for: the book opens without it. */
const ExportDialog = lazy(async () => ({
  default: (await import('./export-dialog.tsx')).ExportDialog,
}))

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
  const [asking, setAsking] = useState(false)
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
  const ask = summary.sealed ? () => setAsking(true) : save
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
      {asking ? (
        <Suspense fallback={null}>
          <ExportDialog onExport={save} onClose={() => setAsking(false)} />
        </Suspense>
      ) : null}
    </div>
  )
}
