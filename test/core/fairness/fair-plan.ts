import type { FairnessCode } from '@/core/fairness/fairness-data.ts'
import type { FairnessItem, ItemOf } from '@/core/fairness/fairness-item.ts'
import type { Circumstances } from '@/core/fairness/fairness-of-plan.ts'
import { fairnessOfPlan } from '@/core/fairness/fairness-of-plan.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { madePlan } from '../made-plan.ts'

export const kitchen: Circumstances['kitchen'] = [
  { id: 'scale-1', kind: 'scale', name: 'Bench', resolutionGrams: 1, capacityGrams: 5000 },
]

/** Two levels of water, 55 (the control) and 80 %, in flour alone: four pieces of 310 g, 200 g of flour each, at the control. */
export function waterPlanOf(change: Partial<Plan> = {}): Plan {
  const plan = madePlan()
  return {
    ...plan,
    levels: [
      { id: 'low', value: 55, label: '55', control: true },
      { id: 'high', value: 80, label: '80', control: false },
    ],
    formula: {
      ingredients: [
        { id: 'flour', name: 'Bread flour', kind: 'flour', percent: 100 },
        { id: 'water', name: 'Water', kind: 'water', percent: 55 },
      ],
      preferments: [],
      batchSize: { by: 'pieces', pieces: 4, pieceGrams: 310, lossPercent: 0 },
    },
    ...change,
  }
}

export function itemsOf(plan: Plan, change: Partial<Circumstances> = {}): FairnessItem[] {
  return fairnessOfPlan(plan, { kitchen, trialSeed: 7, sessions: [], ...change })
}

/** The one item of a code; undefined when it was not found. */
export function itemOf<Code extends FairnessCode>(
  items: readonly FairnessItem[],
  code: Code,
): ItemOf<Code> | undefined {
  return items.find((item): item is Extract<FairnessItem, ItemOf<Code>> => item.code === code)
}
