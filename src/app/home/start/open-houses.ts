import type { House } from '@/core/house/house-record.ts'
import { coveredTrials } from '@/core/lesson/covered-trials.ts'

/** The house formulas a trial may begin from: not those that give away the answer of a lesson under way. */
export function openHouses(houses: readonly House[], lessons: readonly string[]): House[] {
  return houses.filter(
    ({ revisions }) =>
      coveredTrials(
        revisions.flatMap(({ restsOn }) => restsOn.map(({ trialId }) => trialId)),
        lessons,
      ).length === 0,
  )
}
