import type { DayProblem } from './day-problem.ts'
import { type Nodes, nodeOf } from './holds.ts'
import { demand, none, type Paths } from './longest-paths.ts'

/** The ages of one kind, all of which must lie within `spreadSeconds` above a value between `least` and `most`. */
export interface EqualRange {
  spans: { from: number; to: number; plus: number }[]
  spreadSeconds: number
  least: number
  most: number
}

/** The ranges of all kinds at a rung of spread (quarters of tolerance); null where one of them is empty already. */
export function equalRanges(
  problem: DayProblem,
  nodes: Nodes,
  { size, longest }: Paths,
  rung: number,
): EqualRange[] | null {
  const ranges: EqualRange[] = []
  for (const group of equalSpans(problem, nodes)) {
    const spreadSeconds = Math.floor((group.toleranceSeconds * rung) / 4)
    const lows = group.spans.map(
      ({ from, to, plus }) => (longest[from * size + to] as number) + plus,
    )
    const highs = group.spans.map(({ from, to, plus }) => {
      const back = longest[to * size + from] as number
      return back <= none / 2 ? 100_000_000 : plus - back
    })
    const least = Math.max(...lows) - spreadSeconds
    const most = Math.min(...highs)
    if (least > most) return null
    ranges.push({ spans: group.spans, spreadSeconds, least: Math.max(least, -100_000_000), most })
  }
  return ranges
}

/** The ages that are compared, with what is added to x_to − x_from; kinds with one line compare nothing. */
export function equalSpans(problem: DayProblem, nodes: Nodes) {
  const active = new Map(problem.tasks.map(({ id, activeSeconds }) => [id, activeSeconds]))
  return problem.equal
    .filter(({ spans }) => spans.length > 1)
    .map(({ name, toleranceSeconds, spans }) => ({
      ...{ name, toleranceSeconds },
      spans: spans.map(({ from, to, fromEnd, toEnd, lessSeconds = 0 }) => ({
        from: nodeOf(nodes, from),
        to: nodeOf(nodes, to),
        plus:
          (toEnd ? (active.get(to) ?? 0) : 0) -
          (fromEnd ? (active.get(from) ?? 0) : 0) -
          lessSeconds,
      })),
    }))
}

/** Demands that every age lies within the range; false when one cannot. */
export function narrowed(paths: Paths, { spans, least, most, spreadSeconds }: EqualRange): boolean {
  return spans.every(
    ({ from, to, plus }) =>
      demand(paths, from, to, least - plus) &&
      demand(paths, to, from, -(most + spreadSeconds - plus)),
  )
}

/** The two halves of a range whose ages still lie too far apart, the likelier first; null where all are equal enough. */
export function splitOf(
  ranges: readonly EqualRange[],
  times: Int32Array,
): { range: EqualRange; all: EqualRange[] }[] | null {
  for (const range of ranges) {
    const ages = range.spans.map(
      ({ from, to, plus }) => (times[to] as number) - (times[from] as number) + plus,
    )
    const highest = Math.max(...ages)
    if (highest - Math.min(...ages) <= range.spreadSeconds) continue
    const middle = Math.floor((range.least + range.most) / 2)
    const lower = { ...range, most: middle }
    const upper = { ...range, least: middle + 1 }
    const halves = highest - range.spreadSeconds > middle ? [upper, lower] : [lower, upper]
    return halves.map((half) => ({
      range: half,
      all: ranges.map((other) => (other === range ? half : other)),
    }))
  }
  return null
}
