import type { Summary } from './summary-record.ts'

/** One trial in a line of questions. */
export interface ChainLink {
  line: Summary
  /** The question it came from, as it may be told; null for the first, and where that trial is no longer here. */
  cameFrom: string | null
}

/**
 * The chains among these lines: trials that carry one another on, from two on. A trial that several carry on is in one chain
 * with all of them. Within a chain trials stand as they were made; the chain worked on last comes first. Trials that name each
 * other in a circle, as files may, are one chain.
 */
export function chainsOf(lines: readonly Summary[]): ChainLink[][] {
  const known = new Map(lines.map((line) => [line.trialId, line]))
  const before = (line: Summary) => known.get(line.follows?.trialId ?? '')
  const chains = new Map<string, Summary[]>()
  for (const line of lines) {
    const first = firstOf(line, before)
    chains.set(first.trialId, [...(chains.get(first.trialId) ?? []), line])
  }
  return [...chains.values()]
    .filter((chain) => chain.length > 1)
    .toSorted((one, other) => lastWork(other) - lastWork(one))
    .map((chain) =>
      chain
        .toSorted((a, b) => a.createdAt - b.createdAt || (a.trialId < b.trialId ? -1 : 1))
        .map((line) => ({ line, cameFrom: before(line)?.question ?? null })),
    )
}

function firstOf(line: Summary, before: (line: Summary) => Summary | undefined): Summary {
  const met = new Set<Summary>()
  let at = line
  for (let next = before(at); next; next = before(at)) {
    if (met.has(at)) return firstOfCircle(at, before)
    met.add(at)
    at = next
  }
  return at
}

/** Every trial that leads into a circle must come to the same one of it. */
function firstOfCircle(line: Summary, before: (line: Summary) => Summary | undefined): Summary {
  let first = line
  for (let at = before(line); at && at !== line; at = before(at))
    if (at.trialId < first.trialId) first = at
  return first
}

const lastWork = (chain: readonly Summary[]) => Math.max(...chain.map(({ lastAt }) => lastAt))
