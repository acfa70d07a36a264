import type { RungOf } from './day-demands.ts'
import type { DayProblem, Placed } from './day-problem.ts'
import { orderedDay } from './ordered-day.ts'

/** Away from the oven nobody works to the second. */
const halfMinute = 30
const mostRounds = 400

/**
 * The times of a found plan with all tasks but those near the oven moved on to a half minute, within the orders that the plan
 * rests on: the least such times from the found ones up or, where the day's end is fixed, from them down. Where that breaks a
 * bound, the seconds stay as they are.
 */
export function wholeHalfMinutes(
  problem: DayProblem,
  begins: Placed,
  rungOf: RungOf,
  nearOven: ReadonlySet<string>,
): Placed {
  const { ids, times, bounds } = orderedDay(problem, begins, rungOf)
  const down = problem.window.endFixed === true
  const moved = [...times]
  const fixed = new Set(
    bounds.flatMap(({ from, to, least, most }) => (from === 0 && least === most ? [to] : [])),
  )
  const round = (at: number) =>
    (down ? Math.floor(at / halfMinute) : Math.ceil(at / halfMinute)) * halfMinute
  const move = (node: number, at: number): boolean => {
    const now = moved[node] ?? 0
    if (down ? at >= now : at <= now) return false
    moved[node] = at
    return true
  }
  for (let rounds = 0; rounds < mostRounds; rounds += 1) {
    let changed = false
    ids.forEach((id, at) => {
      if (!(nearOven.has(id) || fixed.has(at + 1)))
        changed = move(at + 1, round(moved[at + 1] ?? 0)) || changed
    })
    for (const { from, to, least, most } of bounds) {
      const [a, b] = [moved[from] ?? 0, moved[to] ?? 0]
      if (down) {
        changed = move(from, b - least) || changed
        changed = move(to, a + most) || changed
      } else {
        changed = move(to, a + least) || changed
        changed = move(from, b - most) || changed
      }
    }
    if (moved[0] !== 0 || [...fixed].some((node) => moved[node] !== times[node])) return begins
    if (!changed) return Object.fromEntries(ids.map((id, at) => [id, moved[at + 1] ?? 0]))
  }
  return begins
}
