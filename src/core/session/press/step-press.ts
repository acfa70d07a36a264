import type { AgendaItem } from '@/core/session/agenda.ts'
import { type BakeEntry, bakedPieces } from '@/core/session/bake-entry.ts'
import type { Standing } from '@/core/session/effective-events.ts'
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
 * What one press on an agenda item logs: the step's start or end. A bake is begun by going into the oven and ended by coming
 * out of it, one entry with the pieces of a dough that is baked whole; a piece of it that `log` has in or out already, and
 * spare pieces, are logged one by one, if at all.
 */
export function stepPress(
  session: Session,
  item: Pressed & Pick<AgendaItem, 'do'>,
  log: readonly Standing[],
): BenchEntry[] {
  const starts = item.do === 'start'
  if (item.step.kind !== 'bake') return entriesOf(item, starts ? 'step-started' : 'step-stopped')
  const kind: BakeEntry['kind'] = starts ? 'bake-in' : 'bake-out'
  const { step, repeat, unit, units = [unit] } = item
  const said = log.filter(
    (event): event is BakeEntry =>
      event.kind === kind &&
      (event.stepId ?? step.id) === step.id &&
      (event.repeat ?? 1) === repeat,
  )
  const alone = new Set(said.flatMap(bakedPieces))
  return units.map((about): BenchEntry => {
    if (about.kind === 'piece') return { kind, about, stepId: step.id, repeat }
    const pieces = piecesOfBatch(session, about.id).filter(
      ({ id, role }) => role !== 'spare' && !alone.has(id),
    )
    return { kind, about, stepId: step.id, repeat, pieceIds: pieces.map(({ id }) => id) }
  })
}
