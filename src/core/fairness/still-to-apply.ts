import type { Plan } from '@/core/trial/plan-record.ts'
import { applyRemedy } from './apply-remedy.ts'
import type { FairnessItem } from './fairness-item.ts'
import { isPress } from './remedy.ts'

/** Items without the presses that the plan has followed already: what the log shows stays, its remedy is asked for once. */
export function stillToApply(items: readonly FairnessItem[], plan: Plan): FairnessItem[] {
  const now = JSON.stringify(plan)
  return items.map((item) => ({
    ...item,
    remedies: item.remedies.filter(
      (remedy) => !isPress(remedy) || JSON.stringify(applyRemedy(plan, remedy)) !== now,
    ),
  }))
}
