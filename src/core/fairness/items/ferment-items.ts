import { comparableHours } from '@/core/dough-temperature/comparable-hours.ts'
import type { FairnessItem, LevelAmount } from '@/core/fairness/fairness-item.ts'
import type { LoggedSession } from '@/core/fairness/logged-sessions.ts'
import { bakes } from '@/core/session/bakes.ts'
import { doughsInWork } from '@/core/session/line.ts'
import { temperaturesOf } from '@/core/session/temperatures.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { apartPercent } from './ends-of.ts'
import { madeItem } from './made-item.ts'
import { spreadOf } from './warmth-items.ts'

const timeFactors: readonly string[] = ['rest-time', 'proof-time', 'cold-hours']

/**
 * Time and warmth in one figure: hours at 24 °C from a dough's first reading to its first piece in the oven, straight between
 * the readings, the last one held; as means of each level, in percent apart. Only doughs with two readings or more. Left out
 * where time is the factor, for sourdough, and with a proof in the cold, where the curve says nothing.
 */
export function fermentItems(logged: readonly LoggedSession[]): FairnessItem[] {
  const rows = logged.flatMap((one) => (hasCurve(one.plan) ? hoursOf(one) : []))
  const spread = spreadOf(rows)
  if (!spread) return []
  const { perLevel, ...ends } = spread
  const data = { batches: rows.length, ...ends }
  const found = { size: apartPercent(ends), data, perLevel, path: '' }
  const remedies = [{ code: 'correct-water-by-reading' as const }]
  return [madeItem('ferment-hours', { ...found, when: 'after', remedies })]
}

function hasCurve({ factor, formula, steps }: Plan): boolean {
  return (
    !timeFactors.includes(factor.acts.on) &&
    !formula.preferments.some(({ kind }) => kind === 'starter') &&
    !steps.some(({ kind }) => kind === 'cold-proof')
  )
}

function hoursOf({ session, effective }: LoggedSession): LevelAmount[] {
  const inAt = new Map(bakes(session, effective).map((bake) => [bake.pieceId, bake.inAt]))
  return doughsInWork(session).flatMap(({ id, levelId }): LevelAmount[] => {
    const ovenAt = Math.min(
      ...session.pieces.flatMap((piece) =>
        piece.batchId === id ? (inAt.get(piece.id) ?? []) : [],
      ),
    )
    const readings = temperaturesOf(effective, 'dough', id)
      .filter(({ at }) => at < ovenAt)
      .toSorted((one, other) => one.at - other.at)
    const last = readings.at(-1)
    if (levelId === null || !last || readings.length < 2 || !Number.isFinite(ovenAt)) return []
    const hours = comparableHours(
      [...readings, { ...last, at: ovenAt }].map(({ at, celsius }) => ({
        seconds: at / 1000,
        celsius,
      })),
    )
    return hours.ok ? [{ levelId, value: hours.hours }] : []
  })
}
