import type { Standing } from '@/core/session/effective-events.ts'
import { massUnit } from '@/core/units/mass-text.ts'
import type { WeighLine } from '@/core/weighing/batch-weights.ts'
import type { WeighSheet } from '@/core/weighing/weigh-sheet.ts'
import { rowHead, weightIn } from '@/core/weighing/written-sheet.ts'

/** Under what a weighing is logged. */
export interface LoggedAs {
  ingredientId: string
  prefermentId: string | null
}

/** A line of the weigh sheet as the bench works it: the planned reading, and the readings that were logged. */
export interface ToWeigh {
  key: string
  /** As the weigh sheet calls it: "Water, for the Poolish". */
  name: string
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
  sheet: WeighSheet,
  levelId: string | null,
  batchId: string,
  events: readonly Standing[],
): ToWeigh[] {
  const at = sheet.batches.findIndex((each) => each.levelId === levelId)
  return sheet.rows.flatMap((row) => {
    const weight = weightIn(sheet, row, at)
    if (!weight) return []
    const { line, grams, text } = weight
    const loggedAs = loggedAsOf(line)
    const logged = loggedAs ? loggedWeight(events, batchId, loggedAs) : null
    const name = rowHead(row, sheet)
    return [{ key: line.key, name, grams, text: `${text} ${massUnit()}`, loggedAs, logged }]
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
