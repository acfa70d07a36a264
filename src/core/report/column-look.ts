import type { TableBlock } from './report-block.ts'

/** How wide a column must stay where a window is narrow: figures, a few words, or running text. */
export type ColumnLook = 'figure' | 'few' | 'words'

/** Letters from which a cell is read as running text, and up to which row heads stay on one line. */
const runningText = 30
const oneLine = 20

/** The look of every column of a table, the row heads' first. */
export function columnLooks({ head, rows, figures }: TableBlock): ColumnLook[] {
  return head.map((_, index) => {
    if (figures[index]) return 'figure'
    return rows.some((row) => (row[index] ?? '').length > runningText) ? 'words' : 'few'
  })
}

/** Whether all row heads are short enough to stay on one line each: levels, pairs, rungs. */
export function headsOnOneLine({ rows }: TableBlock): boolean {
  return rows.every(([first = '']) => first.length <= oneLine)
}
