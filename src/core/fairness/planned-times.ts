import { ovenHeat } from '@/core/clock-plan/oven-heat.ts'
import { secondsOfSteps, wayToOvenSeconds } from '@/core/clock-plan/way-to-oven.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { doughStarts } from './dough-starts.ts'

/** Seconds from the start of the day, as the method and the oven let a piece pass; roughly, by one pair of hands. */
export interface PlannedTimes {
  levelId: string
  /** From the mix to the oven by the method alone, and the wait for the oven beyond it. */
  methodSeconds: number
  waitedSeconds: number
  outSeconds: number
  /** From the oven to the mouth. */
  ageSeconds: number
}

/**
 * When each counted piece would be baked and eaten. The oven takes the pieces in the order of the loads, each when it is
 * ready, a place is free and the oven is at its temperature; a dough is begun no sooner than its turn at the oven asks
 * (`doughStarts`), so a piece waits only while the oven is truly busy, and doughs that take differently long meet there. Hot pieces of a load are served one after another, rested ones all together once the last is
 * through its cooling.
 */
export function plannedTimes(plan: Plan, session: Session): PlannedTimes[] {
  const bake = plan.steps.findIndex(({ kind }) => kind === 'bake')
  if (bake < 0) return []
  const levels = new Map(plan.levels.map((level) => [level.id, level]))
  const after = plan.steps.slice(bake + 1)
  const handsAfter = after.reduce((sum, step) => sum + step.handsSeconds * step.repeats, 0)
  const pieces = new Map(session.pieces.map((piece) => [piece.id, piece]))
  const baked = session.dealt.loads
    .toSorted((one, other) => one.number - other.number)
    .flatMap(({ number: load, pieceIds }) =>
      pieceIds.flatMap((id, place) => {
        const piece = pieces.get(id)
        if (!piece) return []
        const { batchId, levelId, role } = piece
        const level = levels.get(levelId) ?? null
        const methodSeconds = wayToOvenSeconds(plan, level)
        const bakeSeconds = secondsOfSteps(plan, level, plan.steps.slice(bake, bake + 1))
        const heat = ovenHeat(plan, level)
        return [{ batchId, levelId, role, load, place, heat, methodSeconds, bakeSeconds }]
      }),
    )
  const { startSeconds, inSeconds } = doughStarts(plan, session.dealt.doughOrder, baked)
  const counted = baked.flatMap((piece, at) => {
    if (piece.role !== 'counted') return []
    const { levelId, place, methodSeconds, bakeSeconds } = piece
    const inAt = inSeconds[at] ?? 0
    return [
      {
        ...{ levelId, methodSeconds },
        waitedSeconds: inAt - (startSeconds.get(piece.batchId) ?? 0) - methodSeconds,
        outSeconds: inAt + bakeSeconds,
        ageSeconds: place * handsAfter + secondsOfSteps(plan, levels.get(levelId) ?? null, after),
      },
    ]
  })
  if (plan.serving === 'as-baked') return counted
  const tasted = Math.max(0, ...counted.map((one) => one.outSeconds + one.ageSeconds))
  return counted.map((one) => ({ ...one, ageSeconds: tasted - one.outSeconds }))
}
