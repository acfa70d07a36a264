import { lineWidth, wrapped } from './wrapped.ts'

/** The least a column of words is narrowed to before the table is let run past the page. */
const narrowest = 20

/**
 * A table in plain text: columns padded to their widest cell, figures flush right, a rule under the head. A last column
 * of words that would run past the page is broken over lines; more columns than the page is wide go on in a table below,
 * with the first column again.
 */
export function textTable(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  figures: readonly boolean[],
): string {
  const widths = widthsOf(head, rows, figures)
  const parts = columnsByPage(widths)
  if (parts.length > 1)
    return parts
      .map((columns) => {
        const of = <Cell>(cells: readonly Cell[]) => cells.filter((_, at) => columns.includes(at))
        return textTable(of(head), rows.map(of), of(figures))
      })
      .join('\n\n')
  const rule = widths.map((width) => '─'.repeat(width)).join('  ')
  const written = (cells: readonly string[]) => writtenRow(cells, widths, figures)
  return [written(head), rule, ...rows.map(written)].join('\n')
}

/** Terms with their explanation beside them, as a help page lists its options. */
export function textList(rows: readonly (readonly [string, string])[]): string {
  const words = [false, false]
  const widths = widthsOf(['', ''], rows, words)
  return rows.map((row) => writtenRow(row, widths, words)).join('\n')
}

function widthsOf(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  figures: readonly boolean[],
): number[] {
  const widths = head.map((title, column) =>
    rows.reduce((most, row) => Math.max(most, widthOf(row[column] ?? '')), widthOf(title)),
  )
  const last = widths.length - 1
  if (figures[last] !== false) return widths
  const before = widths.slice(0, last).reduce((sum, width) => sum + width + 2, 0)
  const room = Math.max(narrowest, lineWidth - before)
  return widths.map((width, column) => (column === last ? Math.min(width, room) : width))
}

/** Which columns stand side by side on one page: as many as fit beside the first, and at least one. */
function columnsByPage(widths: readonly number[]): number[][] {
  const parts: number[][] = []
  let used = Number.POSITIVE_INFINITY
  for (const [column, width] of widths.entries()) {
    if (column === 0) continue
    if (used + 2 + width > lineWidth) {
      parts.push([0])
      used = widths[0] ?? 0
    }
    parts.at(-1)?.push(column)
    used += 2 + width
  }
  return parts
}

function writtenRow(
  cells: readonly string[],
  widths: readonly number[],
  figures: readonly boolean[],
): string {
  const last = widths.length - 1
  const broken = figures[last] === false
  const ends = broken ? wrapped(cells[last] ?? '', '', widths[last]).split('\n') : []
  const before = widths
    .slice(0, broken ? last : undefined)
    .map((width, column) => padded(cells[column] ?? '', width, figures[column] ?? false))
    .join('  ')
  if (!broken) return before.trimEnd()
  const blank = ' '.repeat(widthOf(before))
  return ends.map((end, line) => `${line === 0 ? before : blank}  ${end}`.trimEnd()).join('\n')
}

const widthOf = (text: string) => [...text].length

function padded(text: string, width: number, right: boolean): string {
  const space = ' '.repeat(Math.max(0, width - widthOf(text)))
  return right ? space + text : text + space
}
