import { Button } from '@/app/kit/button.tsx'
import { undoTarget } from '@/core/session/undo-target.ts'
import { eventText } from '@/core/wording/event-text.ts'
import styles from './bench.module.css'
import { type BenchEntry, useBench } from './bench-context.ts'
import { unitName } from './line-name.ts'
import { samePress } from './same-press.ts'

/** Undo, always within reach: takes back what the last press on this device logged, and the one before at the next press. */
export function UndoFoot({ device }: { device: string }) {
  const { whole, session, plan, events, log } = useBench()
  const target = undoTarget(whole.events, device, session.id)
  if (!target) return null
  const { kind, id } = target.about
  const named = kind === 'batch' || kind === 'piece'
  const of = named ? `${unitName(session, plan, { kind, id }).text}: ` : ''
  const takeBack = () =>
    log(
      ...samePress(events, target).map(
        (event): BenchEntry => ({ kind: 'void', about: event.about, corrects: event.id }),
      ),
    )
  return (
    <div className={styles.undo}>
      <Button size="bench" onPress={takeBack}>
        Undo “{of}
        {eventText(target, plan)}”
      </Button>
    </div>
  )
}
