import { normalDensity, normalLower } from '@/core/statistics/distributions/normal.ts'

const step = 0.125
const reach = 8.5

/**
 * Chance that the one level that is truly better than all others, these alike, by so many standard deviations of a level's mean comes out
 * with the highest mean: ∫φ(z)Φ(z + d)^(t−1)dz. With no true difference one of them comes first all the same, each in 1 of t.
 *
 * @example chanceFirst(2, 0) // 0.5 (either of two alike)
 */
export function chanceFirst(levels: number, ahead: number): number {
  let sum = 0
  for (let z = -reach - Math.max(0, ahead); z <= reach; z += step)
    sum += normalDensity(z) * normalLower(z + ahead) ** (levels - 1)
  return step * sum
}
