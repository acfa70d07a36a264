import { lazy, Suspense } from 'react'
import styles from '@/app/bench/bench.module.css'
import { LineMark } from '@/app/bench/line-mark.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { landing } from '@/app/kit/press/keep-focus.ts'
import { type EntryKind, entryNames } from '@/core/session/press/entry-kinds.ts'
import { AnswersEntry } from './answers-entry.tsx'
import type { BenchUnit } from './entry-props.ts'
import { FailureEntry } from './failure-entry.tsx'
import { NoteEntry } from './note-entry.tsx'
import { PiecesEntry } from './pieces-entry.tsx'
import { RiseEntry } from './rise-entry.tsx'
import { TemperatureEntry } from './temperature-entry.tsx'
import { WeighEntry } from './weigh-entry.tsx'
import { WorkedInEntry } from './worked-in-entry.tsx'

const PhotoEntry = lazy(async () => ({ default: (await import('./photo-entry.tsx')).PhotoEntry }))

const entries = {
  weigh: WeighEntry,
  temperature: TemperatureEntry,
  rise: RiseEntry,
  answers: AnswersEntry,
  'worked-in': WorkedInEntry,
  pieces: PiecesEntry,
  failure: FailureEntry,
  photo: PhotoEntry,
  note: NoteEntry,
}

interface EntryPanelProps {
  kind: EntryKind
  unit: BenchUnit
  onClose: () => void
}

/** One decision on the screen: what is being entered, about which dough, and the way back. */
export function EntryPanel({ kind, unit, onClose }: EntryPanelProps) {
  const Entry = entries[kind]
  return (
    <section className={styles.panel} aria-label={entryNames[kind]}>
      <div className={styles.panelHead}>
        <LineMark unit={unit} />
        <h2 {...landing}>{entryNames[kind]}</h2>
        <Button onPress={onClose}>Back</Button>
      </div>
      <Suspense fallback={null}>
        <Entry key={unit.id} unit={unit} onKept={onClose} />
      </Suspense>
    </section>
  )
}
