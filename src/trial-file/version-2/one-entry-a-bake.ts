import type * as z from 'zod/mini'
import type { Content } from '@/trial-file/migration.ts'
import { type FoldableEvent, FoldedLog } from './folded-log.ts'
import type { sessionShape } from './version-1-log.ts'
import type { planShape } from './version-1-plan.ts'

type Plan = z.infer<typeof planShape>
type Session = z.infer<typeof sessionShape>
type StepEntry = FoldableEvent & { kind: 'step-started' | 'step-stopped' }

const bakeKinds = { 'step-started': 'bake-in', 'step-stopped': 'bake-out' } as const

/**
 * Version 1 wrote a bake twice: the step begun or ended, and each piece into or out of the oven, in one press. Of what says the
 * same, one entry is kept, which names its step: the piece's; for a dough that was baked whole, that of the dough, with its
 * pieces. Where one of the two was corrected, the later word stands for both. What was taken back on one side alone, and what
 * has no other side, stays as it was.
 */
export function oneEntryABake(old: Content): Content {
  const { plans, sessions, events } = old as {
    plans: readonly Plan[]
    sessions: readonly Session[]
    events: readonly FoldableEvent[]
  }
  let log = events
  for (const session of sessions) {
    const plan = plans.find(({ id }) => id === session.planId)
    if (plan) log = foldedSession(log, session, plan)
  }
  return { ...old, events: log }
}

function foldedSession(
  events: readonly FoldableEvent[],
  session: Session,
  { steps }: Plan,
): readonly FoldableEvent[] {
  const bakes = steps.flatMap(({ id, kind }) => (kind === 'bake' ? [id] : []))
  const [first] = bakes
  if (first === undefined) return events
  const own = events.filter(({ sessionId }) => sessionId === session.id)
  const log = new FoldedLog(own, events)
  const taken = new Set<string>()
  for (const entry of own) {
    if (!isStepEntry(entry) || !bakes.includes(entry.stepId) || !log.isPlain(entry)) continue
    const partners = partnersOf(entry, session, own).filter(
      (other) => !taken.has(other.id) && log.isPlain(other),
    )
    for (const { id } of partners) taken.add(id)
    const same = partners.find(({ about }) => about.id === entry.about.id)
    if (same) keepPiece(log, entry, same)
    else keepDough(log, entry, partners)
  }
  for (const entry of own) log.nameStep(entry, first)
  return events.flatMap((event) => log.after(event) ?? [])
}

const isStepEntry = (event: FoldableEvent): event is StepEntry => event.kind in bakeKinds

/** What the same press said of the oven: of the same piece or dough, or of the pieces of the dough. */
function partnersOf(
  entry: StepEntry,
  session: Session,
  events: readonly FoldableEvent[],
): FoldableEvent[] {
  const pieces = session.pieces.filter(({ batchId }) => batchId === entry.about.id)
  const units = new Set([entry.about.id, ...pieces.map(({ id }) => id)])
  return events.filter(
    (other) =>
      other.kind === bakeKinds[entry.kind] &&
      other.device === entry.device &&
      other.at === entry.at &&
      other.count > entry.count &&
      other.count <= entry.count + units.size &&
      units.has(other.about.id),
  )
}

/** A piece's own entry is kept, unless it alone was taken back. */
function keepPiece(log: FoldedLog, entry: StepEntry, own: FoldableEvent): void {
  if (log.standing(entry) && !log.standing(own)) return
  const { stepId, repeat } = entry
  log.recast(own, { stepId, repeat })
  log.fold(entry, own)
}

/** The dough's entry is kept, with the pieces of which the same is said. */
function keepDough(log: FoldedLog, entry: StepEntry, pieces: readonly FoldableEvent[]): void {
  const now = log.standing(entry)
  const moments = new Set(pieces.map((piece) => log.standing(piece)?.at))
  const folded = pieces.filter((piece) => {
    const own = log.standing(piece)
    if (!now || !own) return !now && !own
    return moments.size === 1 || own.at === now.at || own.id === piece.id
  })
  if (folded.length === 0) return
  const { stepId, repeat } = entry
  const pieceIds = folded.map(({ about }) => about.id)
  log.recast(entry, { kind: bakeKinds[entry.kind], stepId, repeat, pieceIds })
  for (const [at, piece] of folded.entries()) log.fold(piece, entry, at === 0)
}
