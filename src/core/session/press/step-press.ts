import type { AgendaItem } from '@/core/session/agenda.ts'
import { piecesOfBatch, type Unit } from '@/core/session/line.ts'
import type { BenchEntry } from '@/core/session/press/new-event.ts'
import type { Session } from '@/core/session/session-record.ts'

type Pressed = Pick<AgendaItem, 'unit' | 'step' | 'repeat'> & { units?: readonly Unit[] }

/** The work of a running step is done: its wait begins. */
export const handsOffPress = (item: Pressed): BenchEntry[] => entriesOf(item, 'hands-off')

/** A step is not done, and nothing begins by it. */
export const skipPress = (item: Pressed): BenchEntry[] => entriesOf(item, 'step-skipped')

/** One entry for each dough that a step is done to at once. */
function entriesOf(
  { unit, units = [unit], step, repeat }: Pressed,
  kind: 'step-started' | 'hands-off' | 'step-stopped' | 'step-skipped',
): BenchEntry[] {
  return units.map(
    ({ kind: of, id }): BenchEntry => ({
      ...{ kind, about: { kind: of, id }, stepId: step.id, repeat },
    }),
  )
}

/**
 * What one press on an agenda item logs: the step's start or end and, for baking, each piece into or out of the oven, so
 * that bake times come from the same press. Spare pieces of a dough that is baked whole are logged one by one, if at all.
 */
export function stepPress(session: Session, item: Pressed & Pick<AgendaItem, 'do'>): BenchEntry[] {
  const entries = entriesOf(item, item.do === 'start' ? 'step-started' : 'step-stopped')
  if (item.step.kind !== 'bake') return entries
  const pieceIds =
    item.unit.kind === 'piece'
      ? [item.unit.id]
      : piecesOfBatch(session, item.unit.id)
          .filter((piece) => piece.role !== 'spare')
          .map((piece) => piece.id)
  const kind = item.do === 'start' ? 'bake-in' : 'bake-out'
  return [...entries, ...pieceIds.map((id): BenchEntry => ({ kind, about: { kind: 'piece', id } }))]
}
