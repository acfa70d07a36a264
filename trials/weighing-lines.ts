import type { Level } from '@/core/trial/level.ts'
import { roundToStep } from '@/core/units/round-to-step.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import type { BenchDay, Line } from './bench-day.ts'

/** How long before the first dough a preferment is set. */
export const eveningBeforeHours = 12

const secondsPerWeight = 35
const minute = 60_000

/**
 * The weights of one dough. All doughs are weighed out before the first is mixed, in their order; what ripens first is
 * weighed the evening before.
 */
export function weighingLines(day: BenchDay, batchId: string, level: Level, index: number): Line[] {
  const { plan, session, kitchen, noise, startAt } = day
  const batch = weighSheet(plan, kitchen).batches.find(({ levelId }) => levelId === level.id)
  const weighed = batch?.lines.filter(({ what }) => what === 'ingredient') ?? []
  const perDough = weighed.length * secondsPerWeight * 1000 + minute
  const doughsToCome = session.dealt.doughOrder.length - index
  const morning = startAt - 3 * minute - doughsToCome * perDough
  const evening = startAt - eveningBeforeHours * 60 * minute + index * 4 * minute
  return weighed.flatMap((line, turn) => {
    if (line.ingredientId === null) return []
    const step = line.resolutionGrams ?? 1
    const slip = Math.round(noise(0.5)) * step
    const begun = line.prefermentId === null ? morning : evening
    const moment = begun + turn * secondsPerWeight * 1000
    return {
      at: moment,
      say: {
        kind: 'weighed',
        about: { kind: 'batch', id: batchId },
        at: moment,
        ingredientId: line.ingredientId,
        grams: roundToStep(Math.max(0, line.grams + slip), step),
        ...(line.prefermentId === null ? {} : { prefermentId: line.prefermentId }),
      },
    } satisfies Line
  })
}
