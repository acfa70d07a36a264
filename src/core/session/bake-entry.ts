import type { Plan } from '@/core/trial/plan-record.ts'
import type { Standing } from './effective-events.ts'
import type { EventOf } from './event-record.ts'

/** What goes into the oven or comes out of it. */
export type BakeEntry = EventOf<'bake-in' | 'bake-out'>

/** What an entry of the log, written or to be written, can say of the oven. */
type SaidOfOven = Pick<BakeEntry, 'about' | 'pieceIds'>

/** The pieces that an entry says went in or came out: those of a dough that is baked whole, else the piece it is about. */
export function bakedPieces({ about, pieceIds }: SaidOfOven): readonly string[] {
  return pieceIds ?? (about.kind === 'piece' ? [about.id] : [])
}

/** All that an entry puts in or takes out, by id: what it is about and the pieces it names. */
export function bakedUnits({ about, pieceIds = [] }: SaidOfOven): readonly string[] {
  return [about.id, ...pieceIds]
}

/** The step and the repeat that an entry begins or ends: the method's first bake where it names none; null without a bake. */
export function bakeOf(
  { stepId, repeat = 1 }: Pick<BakeEntry, 'stepId' | 'repeat'>,
  { steps }: Pick<Plan, 'steps'>,
): { stepId: string; repeat: number } | null {
  const id = stepId ?? steps.find(({ kind }) => kind === 'bake')?.id
  return id === undefined ? null : { stepId: id, repeat }
}

/** The step and the repeat that an entry of any kind begins; null where it begins none. */
export function begunBy(
  event: Standing,
  plan: Pick<Plan, 'steps'>,
): { stepId: string; repeat: number } | null {
  if (event.kind === 'bake-in') return bakeOf(event, plan)
  return event.kind === 'step-started' ? event : null
}
