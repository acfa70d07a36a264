import type { Plan } from '@/core/trial/plan-record.ts'
import { bakes } from './bakes.ts'
import type { Standing } from './effective-events.ts'
import type { EventOf } from './event-record.ts'
import type { Piece, Session } from './session-record.ts'
import { temperaturesOf } from './temperatures.ts'

/** What the bench measured of one piece; null where something it needs was not logged. */
export interface PieceMeasures {
  pieceId: string
  batchId: string
  levelId: string
  bakeSeconds: number | null
  /** At the age the piece was weighed, seconds out of the oven (null without a stamp); topped pieces stand apart. */
  bakeLoss: { percent: number; ageSeconds: number | null; topped: boolean } | null
  ovenSpringPercent: number | null
  /** mL per g of the baked piece. */
  specificVolume: number | null
  coreCelsius: number | null
  /** From the start of its dough's mix to the oven. */
  ageAtBakingSeconds: number | null
}

/**
 * The bench measures of every piece: bake loss = (mass in − mass out) / mass in × 100, by the cooled mass or, failing that, the
 * mass at the oven; a piece weighed plain before and topped after (or the other way round) has none. Oven spring = (height out −
 * height in) / height in × 100. Specific volume = volume / mass of the baked piece. Of several readings the last stands.
 */
export function pieceMeasures(
  session: Session,
  plan: Plan,
  effective: readonly Standing[],
): PieceMeasures[] {
  const baked = new Map(bakes(session, effective).map((bake) => [bake.pieceId, bake]))
  return session.pieces.map((piece) => {
    const of = readingsOf(piece, effective)
    const bake = baked.get(piece.id)
    const out = of.mass('cooled') ?? of.mass('out')
    const mixedAt = mixStart(plan, effective, piece.batchId)
    const inAt = bake?.inAt ?? null
    return {
      pieceId: piece.id,
      batchId: piece.batchId,
      levelId: piece.levelId,
      bakeSeconds: bake?.bakeSeconds ?? null,
      bakeLoss: lossOf(of.mass('in'), out, bake?.outAt ?? null),
      ovenSpringPercent: gainPercent(of.size('height-in'), of.size('height-out')),
      specificVolume: ratio(of.size('volume'), out?.grams ?? null),
      coreCelsius: temperaturesOf(effective, 'core', piece.id).at(-1)?.celsius ?? null,
      ageAtBakingSeconds:
        mixedAt === null || inAt === null || inAt < mixedAt ? null : (inAt - mixedAt) / 1000,
    }
  })
}

function readingsOf(piece: Piece, effective: readonly Standing[]) {
  const own = effective.filter((event) => event.about.id === piece.id)
  return {
    mass: (when: EventOf<'mass'>['when']) =>
      own.findLast(
        (event): event is EventOf<'mass'> => event.kind === 'mass' && event.when === when,
      ),
    size: (what: EventOf<'size'>['what']) =>
      own.findLast(
        (event): event is EventOf<'size'> => event.kind === 'size' && event.what === what,
      )?.value ?? null,
  }
}

function lossOf(
  before: EventOf<'mass'> | undefined,
  after: EventOf<'mass'> | undefined,
  outAt: number | null,
): PieceMeasures['bakeLoss'] {
  if (!before || !after || before.grams <= 0) return null
  const topped = after.topped ?? false
  if (topped !== (before.topped ?? false)) return null
  const age = outAt === null ? null : Math.max(0, after.at - outAt) / 1000
  return { percent: ((before.grams - after.grams) / before.grams) * 100, ageSeconds: age, topped }
}

const gainPercent = (before: number | null, after: number | null) =>
  before === null || after === null || before <= 0 ? null : ((after - before) / before) * 100

const ratio = (volume: number | null, grams: number | null) =>
  volume === null || grams === null || grams <= 0 ? null : volume / grams

/** When a dough's first mixing step began (UTC ms); null when that was not logged. */
function mixStart(plan: Plan, effective: readonly Standing[], batchId: string): number | null {
  const mixes = new Set(plan.steps.filter((step) => step.kind === 'mix').map((step) => step.id))
  const start = effective.find(
    (event) =>
      event.kind === 'step-started' && event.about.id === batchId && mixes.has(event.stepId),
  )
  return start?.at ?? null
}
