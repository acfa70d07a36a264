import type { LevelName } from '@/core/findings/rungs/rung-shape.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'

/**
 * The easiest of some levels: the smallest share of failures, then the best handling score, then the least hands-on time, then the
 * control, then the lowest level. Null of none.
 */
export function easiestAmong(scores: ScoreTable, names: readonly LevelName[]): LevelName | null {
  const levels = scores.levels.filter(({ name }) => names.includes(name))
  const easeOf = (name: LevelName) => scores.ease?.find(({ level }) => level === name)
  const ordered = levels.toSorted((a, b) => {
    const [left, right] = [easeOf(a.name), easeOf(b.name)]
    const gaps = [
      failureShare(left) - failureShare(right),
      gap(right?.handling, left?.handling),
      gap(left?.handsSeconds, right?.handsSeconds),
      Number(b.control) - Number(a.control),
      scores.levels.indexOf(a) - scores.levels.indexOf(b),
    ]
    return gaps.find((value) => value !== 0) ?? 0
  })
  return ordered[0]?.name ?? null
}

function failureShare(ease: { failures: number; pieces: number } | undefined): number {
  return ease && ease.pieces > 0 ? ease.failures / ease.pieces : 0
}

function gap(a: number | null | undefined, b: number | null | undefined): number {
  return typeof a === 'number' && typeof b === 'number' ? a - b : 0
}
