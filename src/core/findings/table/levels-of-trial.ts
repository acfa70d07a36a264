import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { ScoreLevel } from './score-table.ts'
import { toldApart } from './told-apart.ts'

/** The levels of a trial with the place of each plan's own levels among them. */
export interface TrialLevels {
  list: ScoreLevel[]
  ordered: boolean
  /** Where a level of the plan that a session ran (null: of the plan in force) stands in the list; -1 where it is none. */
  indexOf: (levelId: string, sessionId: string | null) => number
}

interface Met {
  level: ScoreLevel
  /** Its ids in the plans that have it. */
  ids: Set<string>
}

/**
 * Levels of the plan in force and of every plan that a session ran, in rising order of value; options of a choice, or
 * levels that lack a number, in the order of the plan. A number is one level in all revisions of the plan, whatever its id.
 * An option is known by its id, also where it was named anew meanwhile; one taken out and put back under its old name is
 * the same. Each has the id and name it has in the plan in force.
 */
export function levelsOfTrial(whole: WholeTrial, plan: Plan): TrialLevels {
  const ran = whole.sessions.map((session) => ({
    sessionId: session.id,
    plan: planOfSession(whole, session),
  }))
  const runs: { sessionId: string | null; plan: Plan }[] = [{ sessionId: null, plan }, ...ran]
  const ordered =
    plan.factor.acts.on !== 'choice' &&
    runs.every((run) => run.plan.levels.every(({ value }) => value !== null))
  const met: Met[] = []
  const places = new Map<string, Met>()
  for (const run of runs) {
    for (const level of run.plan.levels) {
      const one = metBefore(met, level, run.plan, ordered) ?? firstMet(met, level, ordered)
      one.ids.add(level.id)
      places.set(placeKey(level.id, run.sessionId), one)
    }
  }
  if (ordered) met.sort((a, b) => Number(a.level.value) - Number(b.level.value))
  else nameApart(met)
  const indexes = new Map(met.map((one, index) => [one, index]))
  return {
    list: met.map(({ level }) => level),
    ordered,
    indexOf: (levelId, sessionId) => {
      const one = places.get(placeKey(levelId, sessionId))
      return one ? (indexes.get(one) ?? -1) : -1
    },
  }
}

function metBefore(met: readonly Met[], level: Level, plan: Plan, ordered: boolean) {
  if (ordered) return met.find((one) => one.level.value === level.value)
  const byId = met.find(({ ids }) => ids.has(level.id))
  if (byId) return byId
  const besides = new Set(plan.levels.map(({ id }) => id))
  return met.find(
    (one) => one.level.label === level.label && [...one.ids].every((id) => !besides.has(id)),
  )
}

function firstMet(met: Met[], { id, value, label, control }: Level, ordered: boolean): Met {
  const taken = met.some((one) => one.level.id === id)
  const name = ordered && value !== null ? value : label
  const level: ScoreLevel = {
    // A level whose number was changed between two sessions is two levels: the plan in force keeps the id.
    id: taken ? `${id} ${name}` : id,
    name,
    value: ordered ? value : null,
    ...{ label, control },
  }
  const one = { level, ids: new Set<string>() }
  met.push(one)
  return one
}

function nameApart(met: readonly Met[]): void {
  const names = toldApart(met.map(({ level }) => level.label))
  for (const [at, { level }] of met.entries()) {
    level.name = names[at] ?? level.label
    level.label = names[at] ?? level.label
  }
}

function placeKey(levelId: string, sessionId: string | null): string {
  return `${sessionId ?? ''}\u0000${levelId}`
}
