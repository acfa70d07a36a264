import { keptAnswer } from '@/core/record/kept-answer.ts'
import { eventsOfSession } from '@/core/session/effective-events.ts'
import { toWeigh } from '@/core/session/press/to-weigh.ts'
import type { Manner } from '@/core/units/manner.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { rowHead, weightIn } from '@/core/weighing/written-sheet.ts'
import { planInForce, planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/** One weight of one dough: as planned, and the mean of what was logged over the sessions; null where none was. */
export interface WeighedCell {
  plannedText: string
  /** Decimals that its scale shows. */
  decimals: number
  weighedGrams: number | null
  sessions: number
}

export interface WeighedRow {
  key: string
  name: string
  /** One a dough of the weigh sheet; null where that takes none. */
  cells: (WeighedCell | null)[]
}

/** The weigh sheet as it was weighed. `levelIds` are its doughs; null is one dough for all levels. */
export interface WeighedSheet {
  levelIds: (string | null)[]
  rows: WeighedRow[]
}

/**
 * The weigh sheet of the plan in force with what the log has of each weight, the mean of all sessions, written in one manner. A dough that was made
 * again counts as one more; what a session did not log is left out of the mean, never taken as planned.
 */
export const weighedByLevel = keptAnswer((whole: WholeTrial, _: Manner): WeighedSheet => {
  const sheet = weighSheet(planInForce(whole), whole.kitchen)
  const logged = loggedGrams(whole)
  return {
    levelIds: sheet.batches.map(({ levelId }) => levelId),
    rows: sheet.rows.map((row) => ({
      key: row.key,
      name: rowHead(row, sheet),
      cells: sheet.batches.map(({ levelId }, at) => {
        const weight = weightIn(sheet, row, at)
        if (!weight) return null
        const grams = logged.get(keyOf(row.key, levelId)) ?? []
        const sum = grams.reduce((total, one) => total + one, 0)
        return {
          plannedText: weight.text,
          decimals: weight.text.split(/[.,]/)[1]?.length ?? 0,
          weighedGrams: grams.length === 0 ? null : sum / grams.length,
          sessions: grams.length,
        }
      }),
    })),
  }
})

const keyOf = (row: string, levelId: string | null) => `${levelId ?? ''} ${row}`

function loggedGrams(whole: WholeTrial): Map<string, number[]> {
  const all = new Map<string, number[]>()
  for (const session of whole.sessions) {
    const sheet = weighSheet(planOfSession(whole, session), whole.kitchen)
    const events = eventsOfSession(whole.events, session.id)
    for (const { id, levelId } of session.batches)
      for (const { key, logged } of toWeigh(sheet, levelId, id, events)) {
        if (!logged) continue
        const at = keyOf(key, levelId)
        all.set(at, [...(all.get(at) ?? []), logged.grams])
      }
  }
  return all
}
