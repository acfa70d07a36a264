import { useBench } from '@/app/bench/bench-context.ts'
import { lineText } from '@/app/bench/line-name.ts'
import { useTemperatureText } from '@/app/kit/field/temperature-unit.ts'
import { Button } from '@/app/kit/press/button.tsx'
import type { BenchEntry } from '@/core/session/press/new-event.ts'
import { samePress } from '@/core/session/press/same-press.ts'
import { undoTarget } from '@/core/session/undo-target.ts'
import { pressText } from '@/core/wording/bench/press-text.ts'

/** Undo: takes back what the last press on this device logged, and at the next press the one before. */
export function UndoButton({ device }: { device: string }) {
  const { whole, session, plan, events, log } = useBench()
  const degrees = useTemperatureText()
  const target = undoTarget(whole.events, device, session.id)
  if (!target) return null
  const press = samePress(events, target)
  const first = press.at(-1) ?? target
  const { kind, id } = first.about
  const of = kind === 'batch' || kind === 'piece' ? lineText(session, plan, { kind, id }) : ''
  const takeBack = () =>
    log(
      ...press.map(
        (event): BenchEntry => ({ kind: 'void', about: event.about, corrects: event.id }),
      ),
    )
  return (
    <Button size="bench" means={`undo/${target.id}`} onPress={takeBack}>
      <span>Undo {pressText(press.toReversed(), plan, of, degrees)}</span>
    </Button>
  )
}
