import type { LevelId } from '@/core/findings/rungs/rung-shape.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'

/**
 * The easiest of some levels: the smallest share of failures, then the best handling score, then the least hands-on time, then the
 * control, then the lowest level. Null of none.
 */
export function easiestAmong(scores: ScoreTable, levelIds: readonly LevelId[]): LevelId | null {
  const levels = scores.levels.filter(({ id }) => levelIds.includes(id))
  const easeOf = (id: LevelId) => scores.ease?.find(({ level }) => level === id)
  const ordered = levels.toSorted((a, b) => {
    const [left, right] = [easeOf(a.id), easeOf(b.id)]
    const gaps = [
      failureShare(left) - failureShare(right),
      gap(right?.handling, left?.handling),
      gap(left?.handsSeconds, right?.handsSeconds),
      Number(b.control) - Number(a.control),
      scores.levels.indexOf(a) - scores.levels.indexOf(b),
    ]
    return gaps.find((value) => value !== 0) ?? 0
  })
  return ordered[0]?.id ?? null
}

function failureShare(ease: { failures: number; pieces: number } | undefined): number {
  return ease && ease.pieces > 0 ? ease.failures / ease.pieces : 0
}

function gap(a: number | null | undefined, b: number | null | undefined): number {
  return typeof a === 'number' && typeof b === 'number' ? a - b : 0
}
