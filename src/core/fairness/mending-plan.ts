import type { Plan } from '@/core/trial/plan-record.ts'
import { applyRemedy } from './apply-remedy.ts'
import type { FairnessItem } from './fairness-item.ts'
import { leftToMend } from './in-turn.ts'
import { isPress } from './remedy.ts'

/** The plan that mends: the same once more, with the first remedy of every open item that one press can apply. */
export function mendingPlan(plan: Plan, items: readonly FairnessItem[]): Plan {
  return leftToMend(items).reduce((mended, { remedies }) => {
    const remedy = remedies.find(isPress)
    return remedy ? applyRemedy(mended, remedy) : mended
  }, plan)
}
