import type { Plan, TellApart } from '@/core/trial/plan-record.ts'

/**
 * The plan with another test asked, of the two levels chosen before, else of the outermost; or none. Words of the baker's own go with
 * the test that they were written for.
 */
export function withTellApart(plan: Plan, test: TellApart['test'] | 'none'): Plan {
  if (test === 'none') return { ...plan, tellApart: null }
  const [first, last] = [plan.levels[0]?.id, plan.levels.at(-1)?.id]
  const levelIds = plan.tellApart?.levelIds ?? (first && last ? [first, last] : null)
  if (!levelIds) return plan
  const { asks: _, ...kept } = plan.tellApart ?? {}
  const words = plan.tellApart?.test === test ? plan.tellApart : kept
  return { ...plan, tellApart: { ...words, test, levelIds } }
}

/** The plan with its set asked in other words; empty for the usual ones. */
export function withWordsOfSet(plan: Plan, text: string): Plan {
  if (!plan.tellApart) return plan
  const { asks: _, ...usual } = plan.tellApart
  return { ...plan, tellApart: text.trim() === '' ? usual : { ...usual, asks: text } }
}

/** The plan with another level in one of the two places of its test. */
export function withToldLevel(plan: Plan, place: number, levelId: string): Plan {
  const { tellApart } = plan
  if (!tellApart) return plan
  const levelIds = tellApart.levelIds.map((each, index) => (index === place ? levelId : each))
  return { ...plan, tellApart: { ...tellApart, levelIds } }
}
