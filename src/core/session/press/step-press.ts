import type { AgendaItem } from '@/core/session/agenda.ts'
import { piecesOfBatch } from '@/core/session/line.ts'
import type { BenchEntry } from '@/core/session/press/new-event.ts'
import type { Session } from '@/core/session/session-record.ts'

/**
 * What one press on an agenda item logs: the step's start or end and, for baking, each piece into or out of the oven, so
 * that bake times come from the same press. Spare pieces of a dough that is baked whole are logged one by one, if at all.
 */
export function stepPress(
  session: Session,
  item: Pick<AgendaItem, 'do' | 'unit' | 'step' | 'repeat'>,
): BenchEntry[] {
  const entry: BenchEntry = {
    kind: item.do === 'start' ? 'step-started' : 'step-stopped',
    about: { kind: item.unit.kind, id: item.unit.id },
    stepId: item.step.id,
    repeat: item.repeat,
  }
  if (item.step.kind !== 'bake') return [entry]
  const pieceIds =
    item.unit.kind === 'piece'
      ? [item.unit.id]
      : piecesOfBatch(session, item.unit.id)
          .filter((piece) => piece.role !== 'spare')
          .map((piece) => piece.id)
  const kind = item.do === 'start' ? 'bake-in' : 'bake-out'
  return [entry, ...pieceIds.map((id): BenchEntry => ({ kind, about: { kind: 'piece', id } }))]
}
