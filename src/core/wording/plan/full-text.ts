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

/** Why a formula that was pasted cannot be taken: it has more of something than a plan takes; null while it fits. */
export function pastedTooManyText(formula: {
  ingredients: readonly unknown[]
  preferments: readonly unknown[]
}): string | null {
  const over = (['ingredients', 'preferments'] as const).find(
    (part) => formula[part].length > most[part],
  )
  if (!over) return null
  return `These are ${formula[over].length} ${partNames[over]}, and a plan takes at most ${most[over]}. Write as one line what is weighed as one, such as a mix of seeds, or leave lines out.`
}

/** Why nothing can be added to a part of the plan that holds as many as it may; null while there is room. */
export function fullText(part: GrowingPart, count: number): string | null {
  if (count < most[part]) return null
  return `A plan takes at most ${most[part]} ${partNames[part]}. Take one out to add another.`
}
