import type { DayProblem } from '@/core/clock-plan/search/day-problem.ts'
import { spreadSeconds } from '@/core/clock-plan/search/spread-seconds.ts'
import type { MadeAnew } from './solve-anew.ts'

/** How a day goes on from now: when all is done (UTC ms), and by how much ages at baking and minutes to the mouth differ. */
export interface WayOn {
  endAt: number
  ageSpreadSeconds: number
  mouthSpreadSeconds: number
}

/** How a day made anew goes on; `originAt` is its second 0, UTC ms. */
export function wayOn(
  problem: DayProblem,
  { begins }: Pick<MadeAnew, 'begins'>,
  originAt: number,
): WayOn {
  const ends = problem.tasks.map(({ id, activeSeconds }) => (begins[id] ?? 0) + activeSeconds)
  return {
    endAt: originAt + Math.max(...ends) * 1000,
    ageSpreadSeconds: spreadSeconds(problem, begins, 'age'),
    mouthSpreadSeconds: spreadSeconds(problem, begins, 'oven'),
  }
}
