import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { TextArea } from '@/app/kit/field/text-area.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import type { EntryProps } from './entry-props.ts'

/** Words about the dough or piece in front. */
export function NoteEntry({ unit, onKept }: EntryProps) {
  const { log, drafts } = useBench()
  const name = `note/${unit.id}`
  const text = drafts.values[name] ?? ''
  const keep = async () => {
    if (!(await log({ kind: 'note', about: unit, text: text.trim() }))) return
    drafts.clear(name)
    onKept()
  }
  return (
    <div className={styles.entry}>
      <TextArea
        label="Note"
        value={text}
        onValue={(next) => drafts.set(name, next)}
        rows={4}
        maxLength={2000}
      />
      <Button kind="primary" size="bench" disabled={text.trim() === ''} onPress={keep}>
        Keep
      </Button>
    </div>
  )
}
