import type { Absent } from '@/core/findings/reason.ts'
import { isPresent } from '@/core/findings/reason.ts'
import type { Easiest, Equivalence } from '@/core/findings/response-findings-shape.ts'
import type { LevelName } from '@/core/findings/rungs/rung-shape.ts'
import type { ScoreLevel, ScoreTable } from '@/core/findings/table/score-table.ts'

/**
 * The easiest level that is as good as the best liked: among the best and those that passed, the one with the smallest
 * share of failures, then the best handling score, then the least hands-on time, then the control, then the lowest level.
 * `lowerLimit` is that level's lower limit against the best (0 when it is the best itself).
 */
export function easiestOf(
  scores: ScoreTable,
  equivalence: Equivalence[] | Absent,
): Easiest | Absent {
  if (!isPresent(equivalence)) return equivalence
  const [first] = equivalence
  if (!first) return { reason: 'one-level' }
  const { against } = first
  const low = new Map(
    equivalence.filter(({ passes }) => passes).map((each) => [each.level, each.low]),
  )
  low.set(against, 0)
  const passing = scores.levels.filter(({ name }) => low.has(name))
  const level = passing.toSorted((a, b) => easeOrder(scores, a, b))[0]?.name ?? against
  return {
    level,
    against,
    lowerLimit: low.get(level) ?? 0,
    passes: passing.map(({ name }) => name),
  }
}

function easeOrder(scores: ScoreTable, a: ScoreLevel, b: ScoreLevel): number {
  const [left, right] = [easeOf(scores, a.name), easeOf(scores, b.name)]
  const gaps = [
    failureShare(left) - failureShare(right),
    gap(right?.handling, left?.handling),
    gap(left?.handsSeconds, right?.handsSeconds),
    Number(b.control) - Number(a.control),
    scores.levels.indexOf(a) - scores.levels.indexOf(b),
  ]
  return gaps.find((value) => value !== 0) ?? 0
}

function easeOf(scores: ScoreTable, name: LevelName) {
  return scores.ease?.find(({ level }) => level === name)
}

function failureShare(ease: ReturnType<typeof easeOf>): number {
  return ease && ease.pieces > 0 ? ease.failures / ease.pieces : 0
}

function gap(a: number | null | undefined, b: number | null | undefined): number {
  return typeof a === 'number' && typeof b === 'number' ? a - b : 0
}
