import type { Plan } from '@/core/trial/plan-record.ts'

/** The named thing of a plan that a JSON Pointer leads into, such as an ingredient or a step; nothing for other places. */
export function planPlaceText(path: string, plan: Plan): string {
  const { ingredients, preferments } = plan.formula
  const lists = {
    'formula/ingredients': ingredients,
    'formula/preferments': preferments,
    steps: plan.steps,
    responses: plan.responses,
  }
  for (const [list, things] of Object.entries(lists)) {
    const [, index] = path.match(`^/${list}/(\\d+)`) ?? []
    if (index !== undefined) return things[Number(index)]?.name ?? ''
  }
  return ''
}
