import type { Plan } from '@/core/trial/plan-record.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { ScoreLevel } from './score-table.ts'

/** The levels of a trial with a look-up by id; levels of the same value in different plan revisions are one. */
export interface TrialLevels {
  list: ScoreLevel[]
  ordered: boolean
  indexOf: (levelId: string) => number
}

/**
 * Levels of the plan in force and of every plan that a session ran, in rising order of value; options of a choice, or
 * levels that lack a number, in the order of the plan.
 */
export function levelsOfTrial(whole: WholeTrial, plan: Plan): TrialLevels {
  const plans = [plan, ...whole.sessions.map((session) => planOfSession(whole, session))]
  const levels = plans.flatMap((each) => each.levels)
  const ordered = plan.factor.acts.on !== 'choice' && levels.every((level) => level.value !== null)
  const nameOf = ({ value, label }: { value: number | null; label: string }) =>
    ordered && value !== null ? value : label
  const byName = new Map<number | string, ScoreLevel>()
  for (const { value, label, control } of levels) {
    const name = nameOf({ value, label })
    if (!byName.has(name)) byName.set(name, { name, value: ordered ? value : null, label, control })
  }
  const list = [...byName.values()]
  if (ordered) list.sort((a, b) => Number(a.value) - Number(b.value))
  const places = new Map(list.map(({ name }, index) => [name, index]))
  const ids = new Map(levels.map((level) => [level.id, places.get(nameOf(level)) ?? -1]))
  return { list, ordered, indexOf: (levelId) => ids.get(levelId) ?? -1 }
}
