import { lazy, Suspense, useState } from 'react'
import { Button } from '@/app/kit/press/button.tsx'
import { saveFile } from '@/app/kit/press/save-file.ts'
import { useServices } from '@/app/services/services.ts'
import type { Summary } from '@/notebook/summary-record.ts'
import styles from './home.module.css'
import { titleOf } from './stage-words.ts'

/** Loaded when it is asked for: the book opens without it. */
const ExportDialog = lazy(async () => ({
  default: (await import('./export-dialog.tsx')).ExportDialog,
}))

export interface TrialMenuProps {
  summary: Summary
  /** Told what was done, and how to take it back. */
  onDone: (message: string, undo: () => Promise<void>) => void
  onErase: (summary: Summary) => void
}

/** What can be done with a trial as a whole. Putting away can be undone at once; erasing asks first. */
export function TrialMenu({ summary, onDone, onErase }: TrialMenuProps) {
  const { notebook } = useServices()
  const { trialId, archived, binned } = summary
  const [asking, setAsking] = useState(false)
  const archive = async (to: boolean) => {
    await notebook.archive(trialId, to)
    onDone(to ? 'Put away' : 'Back in the book', () => notebook.archive(trialId, !to))
  }
  const bin = async (to: boolean) => {
    await notebook.bin(trialId, to)
    onDone(to ? 'Thrown out' : 'Back in the book', () => notebook.bin(trialId, !to))
  }
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
          {press('Take back', () => bin(false))}
          {press('Erase for good', () => onErase(summary))}
        </>
      ) : (
        <>
          {press('Export', ask)}
          {press(archived ? 'Take back' : 'Put away', () => archive(!archived))}
          {press('Throw out', () => bin(true))}
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
