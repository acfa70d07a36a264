import type { Plan, TellApart } from '@/core/trial/plan-record.ts'

/** The plan with another test asked, of the two levels chosen before, else of the outermost; or none. */
export function withTellApart(plan: Plan, test: TellApart['test'] | 'none'): Plan {
  if (test === 'none') return { ...plan, tellApart: null }
  const [first, last] = [plan.levels[0]?.id, plan.levels.at(-1)?.id]
  const levelIds = plan.tellApart?.levelIds ?? (first && last ? [first, last] : null)
  return levelIds ? { ...plan, tellApart: { ...plan.tellApart, test, levelIds } } : plan
}

/** The plan with another level in one of the two places of its test. */
export function withToldLevel(plan: Plan, place: number, levelId: string): Plan {
  const { tellApart } = plan
  if (!tellApart) return plan
  const levelIds = tellApart.levelIds.map((each, index) => (index === place ? levelId : each))
  return { ...plan, tellApart: { ...tellApart, levelIds } }
}
