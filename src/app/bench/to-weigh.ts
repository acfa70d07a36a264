import type { Standing } from '@/core/session/effective-events.ts'
import { stepDecimals } from '@/core/units/round-to-step.ts'
import type { WeighSheet } from '@/core/weighing/weigh-sheet.ts'
import { decimalText } from '@/core/wording/number-text.ts'

/** A line of the weigh sheet as the bench works it: the planned reading, and the reading that was logged. */
export interface ToWeigh {
  key: string
  name: string
  ingredientId: string | null
  prefermentId: string | null
  prefermentName: string | null
  grams: number
  /** The planned reading as the scale shows it: "372 g", "1.50 g". */
  text: string
  /** A dose of a stock or dry mix and a whole preferment are weighed but not logged by ingredient. */
  canLog: boolean
  logged: { eventId: string; grams: number } | null
}

/** What is to be weighed into one dough, in the order of work, with what has been logged of it. */
export function toWeigh(
  sheet: WeighSheet,
  levelId: string | null,
  batchId: string,
  events: readonly Standing[],
): ToWeigh[] {
  const batch = sheet.batches.find((each) => each.levelId === levelId)
  if (!batch) return []
  return batch.lines.map((line) => {
    const preferment = batch.formula.preferments.find(({ id }) => id === line.prefermentId)
    const canLog = line.what === 'ingredient' && line.ingredientId !== null
    return {
      key: line.key,
      name: line.name,
      ingredientId: line.ingredientId,
      prefermentId: line.prefermentId,
      prefermentName: line.into === 'preferment' ? (preferment?.name ?? null) : null,
      grams: line.grams,
      text: `${decimalText(line.grams, line.resolutionGrams === null ? 1 : stepDecimals(line.resolutionGrams))} g`,
      canLog,
      logged: canLog ? loggedWeight(events, batchId, line.ingredientId, line.prefermentId) : null,
    }
  })
}

function loggedWeight(
  events: readonly Standing[],
  batchId: string,
  ingredientId: string | null,
  prefermentId: string | null,
): ToWeigh['logged'] {
  const event = events.findLast(
    (each) =>
      each.kind === 'weighed' &&
      each.about.id === batchId &&
      each.ingredientId === ingredientId &&
      (each.prefermentId ?? null) === prefermentId,
  )
  return event?.kind === 'weighed' ? { eventId: event.id, grams: event.grams } : null
}
