import { most } from '@/core/record/most.ts'

/** Those parts of a plan to which one is added after another, each with its name. */
const partNames = {
  levels: 'levels',
  changesOfLevel: 'differences of one option',
  steps: 'steps',
  ingredients: 'ingredients',
  preferments: 'preferments',
  responses: 'responses',
  tasters: 'tasters',
} as const satisfies Partial<Record<keyof typeof most, string>>

export type GrowingPart = keyof typeof partNames

/** Why nothing can be added to a part of the plan that holds as many as it may; null while there is room. */
export function fullText(part: GrowingPart, count: number): string | null {
  if (count < most[part]) return null
  return `A plan takes at most ${most[part]} ${partNames[part]}. Take one out to add another.`
}
