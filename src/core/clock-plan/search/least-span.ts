import { type DayOf, spanOf } from './day-of.ts'
import type { Paths } from './longest-paths.ts'

const fewNodes = 150

/**
 * Shortens the day: gallops up from what no plan can undercut, halves between the last refusal and the best plan, and, while
 * there is time, asks again with more patience. Every “none” raises the bound; where it meets the plan, the plan is proved.
 */
export function leastSpan(
  day: DayOf,
  first: Paths,
  better: (paths: Paths, boundSeconds: number) => void,
): { paths: Paths; proved: boolean; boundSeconds: number } {
  const { nodes, base, spreadRung } = day
  let paths = first
  let yes = spanOf(day, first)
  let no = (base.longest[nodes.dayBegin * nodes.size + nodes.dayEnd] as number) - 1
  const asked = (spanSeconds: number, count: number): boolean | null => {
    for (const choice of [0, 1, 2] as const) {
      const answer = day.ask({ spanSeconds, spreadRung, choice }, count)
      if (answer.found === 'none') {
        no = Math.max(no, spanSeconds)
        return false
      }
      if (answer.found === 'plan') {
        paths = answer.paths
        yes = Math.min(yes, spanOf(day, paths))
        better(paths, no + 1)
        return true
      }
      if (day.late()) return null
    }
    return null
  }
  let unsure = no
  for (let step = Math.max(1, Math.floor((yes - no) / 64)); no + step < yes; step *= 2) {
    const wanted = Math.max(no, unsure) + step
    if (wanted >= yes || asked(wanted, fewNodes) === true || day.late()) break
    unsure = wanted
  }
  while (Math.max(no, unsure) + 1 < yes && !day.late()) {
    const wanted = Math.floor((Math.max(no, unsure) + yes) / 2)
    if (asked(wanted, fewNodes) === null) unsure = wanted
  }
  for (let count = fewNodes * 8; no + 1 < yes && !day.late(); ) {
    if (asked(Math.floor((no + yes) / 2), count) === null) count *= 2
  }
  return { paths, proved: no + 1 >= yes, boundSeconds: no + 1 }
}
