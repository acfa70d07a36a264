import type { DayProblem } from '@/core/clock-plan/search/day-problem.ts'
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
  const active = new Map(problem.tasks.map(({ id, activeSeconds }) => [id, activeSeconds]))
  const spreadOf = (kind: string) =>
    Math.max(
      0,
      ...problem.equal
        .filter(({ name, spans }) => name.startsWith(kind) && spans.length > 1)
        .map(({ spans }) => {
          const ages = spans.map(
            ({ from, to, fromEnd, lessSeconds = 0 }) =>
              (begins[to] ?? 0) -
              (begins[from] ?? 0) -
              (fromEnd ? (active.get(from) ?? 0) : 0) -
              lessSeconds,
          )
          return Math.max(...ages) - Math.min(...ages)
        }),
    )
  const ends = problem.tasks.map(({ id, activeSeconds }) => (begins[id] ?? 0) + activeSeconds)
  return {
    endAt: originAt + Math.max(...ends) * 1000,
    ageSpreadSeconds: spreadOf('age'),
    mouthSpreadSeconds: spreadOf('oven'),
  }
}
