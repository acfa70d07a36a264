import type { Standing } from './effective-events.ts'
import type { EventOf } from './event-record.ts'

export interface WeighedIn {
  ingredientId: string
  prefermentId: string | null
  grams: number
  /** More than one when it was added in several goes: the grams are their sum. */
  readings: number
}

/**
 * What was actually weighed into a dough, by ingredient and preferment: the sum of the readings that stand, since a dough's
 * water may be added in several goes. A wrong reading is corrected or taken back, never weighed again on top.
 */
export function weightsOfBatch(effective: readonly Standing[], batchId: string): WeighedIn[] {
  const weights = new Map<string, WeighedIn>()
  for (const event of effective) {
    if (event.kind !== 'weighed' || event.about.id !== batchId) continue
    const key = `${event.prefermentId ?? ''}/${event.ingredientId}`
    const sofar = weights.get(key)
    weights.set(key, {
      ingredientId: event.ingredientId,
      prefermentId: event.prefermentId ?? null,
      grams: (sofar?.grams ?? 0) + event.grams,
      readings: (sofar?.readings ?? 0) + 1,
    })
  }
  return [...weights.values()]
}

export interface WorkedIn {
  dustingFlourGrams: number
  handWaterGrams: number
  oilGrams: number
}

/** Flour from the bench, water from wet hands and oil worked into the named doughs or pieces, summed. */
export function workedIn(effective: readonly Standing[], ids: readonly string[]): WorkedIn {
  const sum = (what: EventOf<'worked-in'>['what']) =>
    effective.reduce(
      (total, event) =>
        event.kind === 'worked-in' && event.what === what && ids.includes(event.about.id)
          ? total + event.grams
          : total,
      0,
    )
  return {
    dustingFlourGrams: sum('dusting-flour'),
    handWaterGrams: sum('hand-water'),
    oilGrams: sum('oil'),
  }
}
