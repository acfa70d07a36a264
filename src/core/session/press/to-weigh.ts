import type { Standing } from '@/core/session/effective-events.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { stepDecimals } from '@/core/units/round-to-step.ts'
import type { WeighLine } from '@/core/weighing/batch-weights.ts'
import type { WeighSheet } from '@/core/weighing/weigh-sheet.ts'

/** Under what a weighing is logged. */
export interface LoggedAs {
  ingredientId: string
  prefermentId: string | null
}

/** A line of the weigh sheet as the bench works it: the planned reading, and the readings that were logged. */
export interface ToWeigh {
  key: string
  name: string
  prefermentName: string | null
  grams: number
  /** The planned reading as the scale shows it: "372 g", "1.50 g". */
  text: string
  /**
   * A ripe starter is logged by its preferment's id, a dose of a stock or dry mix by the ingredient it brings; null for a
   * preferment that was built for this dough and goes in whole, whose parts were weighed before.
   */
  loggedAs: LoggedAs | null
  /** The readings that stand, summed: an ingredient may be added in several goes. */
  logged: { eventIds: string[]; grams: number } | null
}

/** What is to be weighed into one dough, in the order of work, with what has been logged of it. */
export function toWeigh(
  sheet: Pick<WeighSheet, 'batches' | 'doses'>,
  levelId: string | null,
  batchId: string,
  events: readonly Standing[],
): ToWeigh[] {
  const batch = sheet.batches.find((each) => each.levelId === levelId)
  if (!batch) return []
  return batch.lines.map((line) => {
    const preferment = batch.formula.preferments.find(({ id }) => id === line.prefermentId)
    const loggedAs = loggedAsOf(line)
    const decimals = line.resolutionGrams === null ? 1 : stepDecimals(line.resolutionGrams)
    const dose = sheet.doses.find(({ ingredientId }) => ingredientId === line.ingredientId)
    return {
      key: line.key,
      name:
        line.what === 'dose' && dose
          ? `${line.name}, ${dose.by === 'stock' ? 'stock' : 'dry mix'}`
          : line.name,
      prefermentName: line.into === 'preferment' ? (preferment?.name ?? null) : null,
      grams: Number(line.grams.toFixed(decimals)),
      text: `${decimalText(line.grams, decimals)} g`,
      loggedAs,
      logged: loggedAs ? loggedWeight(events, batchId, loggedAs) : null,
    }
  })
}

function loggedAsOf({
  what,
  ingredientId,
  prefermentId,
}: Pick<WeighLine, 'what' | 'ingredientId' | 'prefermentId'>): LoggedAs | null {
  if (what === 'starter')
    return prefermentId === null ? null : { ingredientId: prefermentId, prefermentId: null }
  return ingredientId === null ? null : { ingredientId, prefermentId }
}

function loggedWeight(
  events: readonly Standing[],
  batchId: string,
  { ingredientId, prefermentId }: LoggedAs,
): ToWeigh['logged'] {
  const readings = events.flatMap((event) =>
    event.kind === 'weighed' &&
    event.about.id === batchId &&
    event.ingredientId === ingredientId &&
    (event.prefermentId ?? null) === prefermentId
      ? [event]
      : [],
  )
  if (readings.length === 0) return null
  return {
    eventIds: readings.map(({ id }) => id),
    grams: readings.reduce((sum, { grams }) => sum + grams, 0),
  }
}
