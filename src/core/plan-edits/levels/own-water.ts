import type { Formula } from '@/core/formula/formula-record.ts'
import { hydrationPercent } from '@/core/formula/hydration.ts'
import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { withChanges } from './changes.ts'

/** True where some option of a choice has a hydration of its own. */
export function hasOwnWater({ levels }: Pick<Plan, 'levels'>): boolean {
  return levels.some(waterOf)
}

/** The hydration an option starts from when it is to have its own: what the formula has, to a tenth. */
export function startingWater(formula: Formula): number {
  return Number((hydrationPercent(formula) ?? 65).toFixed(1))
}

/** Every option with a hydration of its own, to be changed one by one; what an option has already stays. */
export function withOwnWater(plan: Plan): Plan {
  const water = { what: 'hydration' as const, percent: startingWater(plan.formula) }
  const levels = plan.levels.map((level) =>
    waterOf(level) ? level : { ...level, changes: [...(level.changes ?? []), water] },
  )
  return { ...plan, levels }
}

/** Every option at the formula's own hydration. */
export function withSameWater(plan: Plan): Plan {
  const levels = plan.levels.map((level) =>
    withChanges(
      level,
      level.changes?.filter(({ what }) => what !== 'hydration'),
    ),
  )
  return { ...plan, levels }
}

/** Levels with the hydration named for each; what else a level changes stays. */
export function withLevelWaters(
  plan: Plan,
  waters: readonly { levelId: string; percent: number }[],
): Plan {
  const levels = plan.levels.map((level) => {
    const percent = waters.find(({ levelId }) => levelId === level.id)?.percent
    if (percent === undefined) return level
    const others = level.changes?.filter(({ what }) => what !== 'hydration') ?? []
    return withChanges(level, [...others, { what: 'hydration', percent }])
  })
  return { ...plan, levels }
}

const waterOf = ({ changes }: Level) => changes?.some(({ what }) => what === 'hydration') ?? false
