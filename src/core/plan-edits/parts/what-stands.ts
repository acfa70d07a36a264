import { withChanges } from '@/core/plan-edits/levels/changes.ts'
import { withWrittenFirst } from '@/core/plan-edits/start/with-written-first.ts'
import type { Change } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/**
 * The plan without what names something that is gone from it: a test of a level taken out, a hope for it, a dose of an
 * ingredient, an option's difference in a step. The notebook keeps no plan that names what it has not.
 */
export function namingWhatStands(plan: Plan): Plan {
  const { formula, tellApart, writtenFirst } = plan
  const [levels, steps, ingredients] = [plan.levels, plan.steps, formula.ingredients].map(idsOf)
  const hoped = writtenFirst?.hopedLevelId ?? null
  const named =
    hoped === null || levels?.has(hoped) ? plan : withWrittenFirst(plan, { hopedLevelId: null })
  const partStands = (part: { ingredientId: string }) => ingredients?.has(part.ingredientId)
  const changeStands = (change: Change) => {
    if (change.what === 'ingredient') return ingredients?.has(change.ingredientId)
    return change.what === 'step' ? steps?.has(change.stepId) : true
  }
  return {
    ...named,
    levels: plan.levels.map((level) => {
      const { changes = [] } = level
      return changes.every(changeStands) ? level : withChanges(level, changes.filter(changeStands))
    }),
    formula: {
      ...formula,
      preferments: formula.preferments.map((each) =>
        each.parts.every(partStands) ? each : { ...each, parts: each.parts.filter(partStands) },
      ),
    },
    sharedDoses: plan.sharedDoses.filter(partStands),
    mainResponseId: plan.responses.some(({ id }) => id === plan.mainResponseId)
      ? plan.mainResponseId
      : null,
    tellApart: tellApart?.levelIds.every((id) => levels?.has(id)) ? tellApart : null,
  }
}

const idsOf = (things: readonly { id: string }[]) => new Set(things.map(({ id }) => id))
