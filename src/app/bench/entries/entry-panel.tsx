import type { ComponentType } from 'react'
import styles from '@/app/bench/bench.module.css'
import { BenchFoot } from '@/app/bench/bench-foot.tsx'
import { LineMark } from '@/app/bench/line-mark.tsx'
import { lateComponent } from '@/app/kit/page/late-view.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { landing } from '@/app/kit/press/keep-focus.ts'
import { type EntryKind, entryNames } from '@/core/session/press/entry-kinds.ts'
import { AnswersEntry } from './answers-entry.tsx'
import type { EntryProps } from './entry-props.ts'
import { FailureEntry } from './failure-entry.tsx'
import { FoldsEntry } from './folds-entry.tsx'
import { NoteEntry } from './note-entry.tsx'
import { PiecesEntry } from './pieces-entry.tsx'
import { RiseEntry } from './rise-entry.tsx'
import { TemperatureEntry } from './temperature-entry.tsx'
import { WeighEntry } from './weigh-entry.tsx'
import { WorkedInEntry } from './worked-in-entry.tsx'

const PhotoEntry = lateComponent(async () => (await import('./photo-entry.tsx')).PhotoEntry, null)

const entries: Record<EntryKind, ComponentType<EntryProps>> = {
  weigh: WeighEntry,
  temperature: TemperatureEntry,
  rise: RiseEntry,
  folds: FoldsEntry,
  answers: AnswersEntry,
  'worked-in': WorkedInEntry,
  pieces: PiecesEntry,
  failure: FailureEntry,
  photo: PhotoEntry,
  note: NoteEntry,
}

/** Entries of one number: their main press keeps it, and stands at the foot with what goes back. */
const ofOneNumber: ReadonlySet<EntryKind> = new Set([
  ...(['weigh', 'temperature', 'rise', 'folds', 'worked-in'] as const),
])

interface EntryPanelProps extends Omit<EntryProps, 'onKept'> {
  kind: EntryKind
  onClose: () => void
}

/** One decision on the screen: what is being entered, about which dough, and the way back. */
export function EntryPanel({ kind, unit, of, caption, onClose }: EntryPanelProps) {
  const Entry = entries[kind]
  return (
    <>
      <section className={styles.panel} aria-label={entryNames[kind]}>
        {ofOneNumber.has(kind) ? null : (
          <div className={styles.panelHead}>
            <LineMark unit={unit} />
            <h2 {...landing}>{entryNames[kind]}</h2>
          </div>
        )}
        <Entry key={unit.id} unit={unit} of={of} caption={caption} onKept={onClose} />
      </section>
      {ofOneNumber.has(kind) ? null : (
        <BenchFoot>
          <Button size="bench" onPress={onClose}>
            Back
          </Button>
        </BenchFoot>
      )}
    </>
  )
}
