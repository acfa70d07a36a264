import type { ScoreLevel, ScoreTable } from './score-table.ts'

/** The levels that have scores, renumbered without gaps: `level[i]` is row i's, `index` the place in the table. */
export interface LevelsPresent {
  level: ArrayLike<number>
  index: number[]
  levels: ScoreLevel[]
  /** The control's number among those present; null when there is none or it has no score. */
  control: number | null
}

/** Drops levels without any row, so that a model of the rest can still be fitted. */
export function levelsPresent(scores: ScoreTable, level: ArrayLike<number>): LevelsPresent {
  const seen = scores.levels.map(() => false)
  for (let row = 0; row < level.length; row += 1) seen[level[row] as number] = true
  const index = scores.levels.map((_, at) => at).filter((at) => seen[at])
  const code = scores.levels.map((_, at) => index.indexOf(at))
  const levels = index.map((at) => scores.levels[at] as ScoreLevel)
  const control = levels.findIndex((each) => each.control)
  return {
    level: seen.includes(false) ? Int32Array.from(level, (at) => code[at] as number) : level,
    index,
    levels,
    control: control < 0 ? null : control,
  }
}
