import { chanceAsGood } from '@/core/statistics/power/chance-as-good.ts'

/** What makes a plan likely enough: the chance that is asked of it, and the most sessions a home baker is told of. */
export const wantedChance = 0.8
const mostSessions = 60

/** What the chance depends on when only the number of sessions (or tasters) is open: `unitVariance` is of one level's mean from one of them. */
export interface OpenDesign {
  levels: number
  unitVariance: number
  margin: number
  named: boolean
  /** Error of the bound with so many sessions; 0.05 unless one looks early. */
  errorWith?: (count: number) => number
}

/** The chance with so many sessions, all levels equal; 0 with fewer than two. */
export function chanceWith(
  { levels, unitVariance, margin, named, errorWith }: OpenDesign,
  count: number,
) {
  if (count < 2) return 0
  const meanSd = Math.sqrt(unitVariance / count)
  const error = errorWith?.(count) ?? 0.05
  return chanceAsGood({ levels, meanSd, df: (levels - 1) * (count - 1), margin, named, error })
}

/** The fewest sessions that make it 8 in 10; null when sixty would not. */
export function sessionsForChance(design: OpenDesign): number | null {
  if (chanceWith(design, mostSessions) < wantedChance) return null
  let [low, high] = [1, mostSessions]
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2)
    if (chanceWith(design, middle) >= wantedChance) high = middle
    else low = middle
  }
  return high
}

/** The smallest margin that so many sessions make 8 in 10. */
export function marginForChance(design: Omit<OpenDesign, 'margin'>, count: number): number {
  let [low, high] = [0, Math.sqrt(design.unitVariance) * 4]
  while (chanceWith({ ...design, margin: high }, count) < wantedChance) high *= 2
  for (let round = 0; round < 20; round += 1) {
    const middle = (low + high) / 2
    if (chanceWith({ ...design, margin: middle }, count) >= wantedChance) high = middle
    else low = middle
  }
  return high
}
