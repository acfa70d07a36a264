import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { BatchWeights } from '@/core/weighing/batch-weights.ts'
import { levelFromWeights } from '@/core/weighing/level-from-weights.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { eventsOfSession } from './effective-events.ts'
import type { Event } from './event-record.ts'
import { piecesOfBatch } from './line.ts'
import type { Session } from './session-record.ts'
import { weightsOfBatch, workedIn } from './weights-of-batch.ts'

/** One dough's level as planned, by the logged weights, and with what was worked in while handling; the factor's own unit. */
export interface LevelAsWorked {
  batchId: string
  levelId: string | null
  planned: number | null
  /** Null for a factor that is not read from weights, and where nothing was logged. */
  weighed: number | null
  weighedUncertainty: number | null
  /** As weighed, told at 14 % flour moisture; null where a bag's moisture is not known, and for another factor than water. */
  atFourteen: number | null
  handled: number | null
  /** How many of the weights that make the level were logged; the others stand at their target. */
  loggedLines: number
  allLines: number
}

interface Worked {
  plan: Plan
  session: Session
  /** The log, as it came or as it stands. */
  events: readonly Event[]
  kitchen: readonly KitchenThing[]
}

/**
 * The level of every dough of a session, as planned, as weighed and as handled. Flour, water and oil worked into a dough's
 * pieces are summed to the dough. In dough order.
 */
export function workedLevels({ plan, session, events, kitchen }: Worked): LevelAsWorked[] {
  const effective = eventsOfSession(events, session.id)
  const sheet = weighSheet(plan, kitchen)
  return session.dealt.doughOrder.flatMap((batchId) => {
    const batch = session.batches.find((one) => one.id === batchId)
    if (!batch) return []
    const weights = sheetOfBatch(sheet.batches, batch.levelId)
    const ids = [batchId, ...piecesOfBatch(session, batchId).map((piece) => piece.id)]
    const worked = weights
      ? levelFromWeights(
          weights,
          plan.factor.acts,
          weightsOfBatch(effective, batchId),
          workedIn(effective, ids),
        )
      : null
    const known = worked?.ok ? worked : null
    return {
      batchId,
      levelId: batch.levelId,
      planned: plan.levels.find((level) => level.id === batch.levelId)?.value ?? null,
      weighed: known?.weighed.value ?? null,
      weighedUncertainty: known?.weighed.uncertainty ?? null,
      atFourteen: known?.atFourteen ?? null,
      handled: known?.handled.value ?? null,
      loggedLines: known?.loggedLines ?? 0,
      allLines: known?.allLines ?? 0,
    }
  })
}

/** A dough's column of the weigh sheet: that of its level, or the one dough for all. */
export function sheetOfBatch(
  batches: readonly BatchWeights[],
  levelId: string | null,
): BatchWeights | undefined {
  return batches.find((one) => one.levelId === levelId)
}
