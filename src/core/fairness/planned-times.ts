import { staggerSeconds } from '@/core/design/bake-order.ts'
import { stepAtLevel } from '@/core/design/step-at-level.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

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
 * When each counted piece would be baked and eaten: doughs begin one stagger apart in dough order; in the order of the
 * loads each piece goes in when it is ready and a place in the oven is free. Hot pieces of a load are served one after another, rested ones all together once
 * the last is through its cooling.
 */
export function plannedTimes(plan: Plan, session: Session): PlannedTimes[] {
  const bake = plan.steps.findIndex(({ kind }) => kind === 'bake')
  if (bake < 0) return []
  const stagger = staggerSeconds(plan)
  const mixAt = new Map(session.dealt.doughOrder.map((id, index) => [id, index * stagger]))
  const levels = new Map(plan.levels.map((level) => [level.id, level]))
  const seconds = (levelId: string, from: number, to: number) =>
    plan.steps.slice(from, to).reduce((sum, step) => {
      const own = stepAtLevel(plan.factor, step, levels.get(levelId) ?? null)
      return sum + (own ? (own.handsSeconds + own.waitSeconds) * own.repeats : 0)
    }, 0)
  const handsAfter = plan.steps
    .slice(bake + 1)
    .reduce((sum, step) => sum + step.handsSeconds * step.repeats, 0)
  const pieces = new Map(session.pieces.map((piece) => [piece.id, piece]))
  const placesFree = Array.from({ length: plan.placesPerLoad }, () => 0)
  const times: (PlannedTimes & { counted: boolean })[] = []
  for (const load of session.dealt.loads.toSorted((a, b) => a.number - b.number)) {
    const own = load.pieceIds.flatMap((id) => pieces.get(id) ?? [])
    own.forEach(({ batchId, levelId, role }, place) => {
      const ready = (mixAt.get(batchId) ?? 0) + seconds(levelId, 0, bake)
      const free = placesFree.indexOf(Math.min(...placesFree))
      const inAt = Math.max(placesFree[free] ?? 0, ready)
      const outSeconds = inAt + seconds(levelId, bake, bake + 1)
      placesFree[free] = outSeconds
      times.push({
        levelId,
        counted: role === 'counted',
        methodSeconds: seconds(levelId, 0, bake),
        waitedSeconds: inAt - ready,
        outSeconds,
        ageSeconds: place * handsAfter + seconds(levelId, bake + 1, plan.steps.length),
      })
    })
  }
  const counted = times.filter((one) => one.counted)
  if (plan.serving === 'as-baked') return counted
  const tasted = Math.max(0, ...counted.map((one) => one.outSeconds + one.ageSeconds))
  return counted.map((one) => ({ ...one, ageSeconds: tasted - one.outSeconds }))
}
