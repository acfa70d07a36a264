import type { TrialLevels } from '@/core/findings/table/levels-of-trial.ts'
import type { LevelEase } from '@/core/findings/table/score-table.ts'
import { eventsOfSession } from '@/core/session/effective-events.ts'
import { failuresOf } from '@/core/session/failures.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { stepAtLevel } from '@/core/trial/step-at-level.ts'
import type { Observation } from '@/core/whole-trial/observed.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/**
 * What each level costs beside its score: how many of its counted pieces failed, the hands-on time of one line through
 * the method, and the baker's mean handling score (nine-point, turned so that more is easier; not blind).
 */
export function easeOfTrial(
  whole: WholeTrial,
  plan: Plan,
  levels: TrialLevels,
  rows: readonly Observation[],
): LevelEase[] {
  const pieces = countPieces(whole, levels)
  const handling = handlingOf(plan, levels, rows)
  return levels.list.map((entry, at) => {
    const level = plan.levels.find(({ id }) => levels.indexOf(id, null) === at)
    const steps = plan.steps.map((step) => (level ? stepAtLevel(plan.factor, step, level) : null))
    const handsSeconds = steps.reduce(
      (sum, step) => sum + (step ? step.handsSeconds * step.repeats : 0),
      0,
    )
    return {
      level: entry.id,
      failures: pieces.failed[at] ?? 0,
      pieces: pieces.all[at] ?? 0,
      handsSeconds: level ? handsSeconds : null,
      handling: handling[at] ?? null,
    }
  })
}

function countPieces(whole: WholeTrial, levels: TrialLevels) {
  const all = levels.list.map(() => 0)
  const failed = levels.list.map(() => 0)
  for (const session of whole.sessions) {
    const failures = failuresOf(session, eventsOfSession(whole.events, session.id))
    const hit = new Set(failures.flatMap(({ pieceIds }) => pieceIds))
    for (const piece of session.pieces) {
      const at = levels.indexOf(piece.levelId, session.id)
      if (piece.role !== 'counted' || at < 0) continue
      all[at] = (all[at] ?? 0) + 1
      if (hit.has(piece.id)) failed[at] = (failed[at] ?? 0) + 1
    }
    // A dough that failed and was made again failed with all it would have given to the flights.
    for (const { id, levelId } of session.batches) {
      if (session.dealt.doughOrder.includes(id)) continue
      levels.list.forEach((_, at) => {
        if (levelId !== null && levels.indexOf(levelId, session.id) !== at) return
        all[at] = (all[at] ?? 0) + session.dealt.flights.length
        failed[at] = (failed[at] ?? 0) + session.dealt.flights.length
      })
    }
  }
  return { all, failed }
}

function handlingOf(plan: Plan, levels: TrialLevels, rows: readonly Observation[]) {
  const turn = new Map<string, (value: number) => number>()
  for (const { id, by, scale, better } of plan.responses) {
    if (by !== 'baker' || scale.kind !== 'nine-point') continue
    if (better.is === 'higher') turn.set(id, (value) => value)
    if (better.is === 'lower') turn.set(id, (value) => 10 - value)
  }
  const sums = levels.list.map(() => ({ sum: 0, n: 0 }))
  for (const { responseId, levelId, sessionId, value } of rows) {
    const at = sums[levels.indexOf(levelId, sessionId)]
    const turned = turn.get(responseId)
    if (!at || !turned) continue
    at.sum += turned(value)
    at.n += 1
  }
  return sums.map(({ sum, n }) => (n === 0 ? null : sum / n))
}
