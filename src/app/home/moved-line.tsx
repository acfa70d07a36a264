import { useLiveQuery } from 'dexie-react-hooks'
import { Button } from '@/app/kit/press/button.tsx'
import { landing } from '@/app/kit/press/keep-focus.ts'
import { useServices } from '@/app/services/services.ts'
import type { Summary } from '@/notebook/summary-record.ts'
import styles from './home.module.css'
import { titleOf } from './stage-words.ts'

/** A trial that has just been taken off this shelf. */
export interface Moved {
  summary: Summary
  /** What was done with it. */
  words: string
  undo: () => Promise<void>
}

/** Stands in the place of a row that has just gone, and offers to take it back, for as long as the shelf stays open. */
export function MovedLine({ moved }: { moved: Moved }) {
  const { notebook } = useServices()
  const { trialId } = moved.summary
  const erased = useLiveQuery(
    async () => (await notebook.shelfNow(trialId)) === null,
    [notebook, trialId],
  )
  return (
    <li className={styles.moved}>
      <p {...landing}>
        <b>{erased ? 'Erased for good' : moved.words}:</b> {titleOf(moved.summary)}
      </p>
      {erased ? null : (
        <Button kind="quiet" onPress={moved.undo}>
          Undo
        </Button>
      )}
    </li>
  )
}
