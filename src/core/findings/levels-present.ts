import type { ScoreLevel, ScoreTable } from './score-table.ts'

/** The levels that have scores, renumbered without gaps: `level[i]` is row i's, `index` the place in the table. */
export interface LevelsPresent {
  level: readonly number[]
  index: number[]
  levels: ScoreLevel[]
  /** The control's number among those present; null when there is none or it has no score. */
  control: number | null
}

/** Drops levels without any row, so that a model of the rest can still be fitted. */
export function levelsPresent(scores: ScoreTable, level: readonly number[]): LevelsPresent {
  const seen = scores.levels.map(() => false)
  for (const at of level) seen[at] = true
  const index = scores.levels.map((_, at) => at).filter((at) => seen[at])
  const code = new Map(index.map((at, number) => [at, number]))
  const levels = index.map((at) => scores.levels[at] as ScoreLevel)
  const control = levels.findIndex((each) => each.control)
  return {
    level: seen.includes(false) ? level.map((at) => code.get(at) as number) : level,
    index,
    levels,
    control: control < 0 ? null : control,
  }
}
