import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { TextField } from '@/app/kit/field/text-field.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import type { EventOf } from '@/core/session/event-record.ts'
import { failureText } from '@/core/wording/bench/failure-text.ts'
import type { EntryProps } from './entry-props.ts'

const kinds: EventOf<'failure'>['what'][] = [
  'stuck',
  'torn',
  'burnt',
  'gummy',
  'rescued',
  'not-served',
  'other',
]

/** A failure is an answer in itself: one press each, with a word about it where there is one. */
export function FailureEntry({ unit, onKept }: EntryProps) {
  const { log, drafts } = useBench()
  const name = `failure/${unit.id}`
  const note = drafts.values[name] ?? ''
  const keep = async (what: EventOf<'failure'>['what']) => {
    const words = note.trim() === '' ? {} : { note: note.trim() }
    if (!(await log({ kind: 'failure', about: unit, what, ...words }))) return
    drafts.clear(name)
    onKept()
  }
  return (
    <div className={styles.entry}>
      <TextField
        label="What happened (may stay empty)"
        value={note}
        onValue={(next) => drafts.set(name, next)}
        maxLength={500}
      />
      <div className={styles.pair}>
        {kinds.map((what) => (
          <Button key={what} size="bench" onPress={() => keep(what)}>
            {failureText(what)}
          </Button>
        ))}
      </div>
    </div>
  )
}
