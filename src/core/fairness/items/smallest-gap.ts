import type { Plan } from '@/core/trial/plan-record.ts'

/** The smallest gap between two levels, in the factor's own unit; null for a choice or with fewer than two values. */
export function smallestGap({ levels }: Pick<Plan, 'levels'>): number | null {
  const values = levels.flatMap(({ value }) => (value === null ? [] : [value]))
  const inOrder = values.toSorted((a, b) => a - b)
  const gaps = inOrder.slice(1).map((value, index) => value - (inOrder[index] ?? value))
  const apart = gaps.filter((gap) => gap > 0)
  return apart.length === 0 ? null : Math.min(...apart)
}
