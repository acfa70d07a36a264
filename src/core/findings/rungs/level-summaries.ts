import { absent } from '@/core/findings/reason.ts'
import type { LevelSummary } from '@/core/findings/response-findings-shape.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { describe } from '@/core/statistics/description/describe.ts'
import type { Cells } from './cells.ts'
import { parted } from './parted.ts'

/** What happened at each level over all its rows: n, mean, sd, 95 % t-interval, median. Descriptive only, levels without scores included. */
export function levelSummaries(scores: ScoreTable, cells: Cells): LevelSummary[] {
  const byLevel = parted(cells.y, cells.level, scores.levels.length)
  return scores.levels.map(({ id }, at) => {
    const { n, mean, sd, low, high, median } = describe(byLevel[at] as Float64Array)
    const none = absent(n === 0 ? 'no-scores' : 'too-few-values')
    const flat = sd === 0 ? absent('all-equal') : null
    return {
      level: id,
      n,
      mean: mean ?? none,
      sd: sd ?? none,
      low: flat ?? low ?? none,
      high: flat ?? high ?? none,
      median: median ?? none,
    }
  })
}
