import type { ScoreTable } from '@/core/findings/table/score-table.ts'

/** The table as a spreadsheet would hold it, a line a row. */
export function csvForSpeed(scores: ScoreTable): string {
  const lines = scores.rows.map((row) =>
    [
      row.session,
      scores.levels[row.level]?.label,
      row.taster,
      row.position,
      row.minutes,
      row.values[0],
    ].join(','),
  )
  return ['session,level,taster,position,minutes,liking', ...lines].join('\n')
}
