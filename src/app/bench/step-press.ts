import type { AgendaItem } from '@/core/session/agenda.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { BenchEntry } from './bench-context.ts'

/**
 * What one press on an agenda item logs: the step's start or end and, for baking, each piece into or out of the oven, so
 * that bake times come from the same press.
 */
export function stepPress(session: Session, item: AgendaItem): BenchEntry[] {
  const about = { kind: item.unit.kind, id: item.unit.id }
  const entry: BenchEntry = {
    kind: item.do === 'start' ? 'step-started' : 'step-stopped',
    about,
    stepId: item.step.id,
    repeat: item.repeat,
  }
  if (item.step.kind !== 'bake') return [entry]
  const pieceIds =
    item.unit.kind === 'piece'
      ? [item.unit.id]
      : session.pieces.filter((piece) => piece.batchId === item.unit.id).map((piece) => piece.id)
  const kind = item.do === 'start' ? 'bake-in' : 'bake-out'
  return [entry, ...pieceIds.map((id): BenchEntry => ({ kind, about: { kind: 'piece', id } }))]
}
