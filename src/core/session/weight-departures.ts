import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import type { Departure } from './departure.ts'
import type { Standing } from './effective-events.ts'
import { doughsInWork } from './line.ts'
import type { Session } from './session-record.ts'
import { weightsOfBatch } from './weights-of-batch.ts'
import { sheetOfBatch } from './worked-levels.ts'

/** Common practice, no source: a weight within one percent of its target is as planned. */
const mostOffPercent = 1

/**
 * Weights that miss the weigh sheet's by more than one percent and by more than one step of the scale they stand on. What was
 * not logged is not held against anybody.
 */
export function weightDepartures(
  session: Session,
  plan: Plan,
  effective: readonly Standing[],
  kitchen: readonly KitchenThing[],
): Departure[] {
  if (!effective.some((event) => event.kind === 'weighed')) return []
  const sheet = weighSheet(plan, kitchen)
  return doughsInWork(session).flatMap((batch) => {
    const lines = sheetOfBatch(sheet.batches, batch.levelId)?.lines ?? []
    return weightsOfBatch(effective, batch.id).flatMap((logged): Departure[] => {
      const line = lines.find((one) =>
        one.what === 'starter'
          ? one.prefermentId === logged.ingredientId
          : one.ingredientId === logged.ingredientId && one.prefermentId === logged.prefermentId,
      )
      if (!line || line.grams <= 0) return []
      const off = logged.grams - line.grams
      const offPercent = (off / line.grams) * 100
      const isNear = Math.abs(off) <= (line.resolutionGrams ?? 0) + 1e-9
      if (isNear || Math.abs(offPercent) <= mostOffPercent) return []
      const { ingredientId, prefermentId } = logged
      return [
        {
          what: 'weight',
          batchId: batch.id,
          levelId: batch.levelId,
          ingredientId,
          prefermentId,
          plannedGrams: line.grams,
          doneGrams: logged.grams,
          offPercent,
        },
      ]
    })
  })
}
