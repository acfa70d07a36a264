/** A table in plain text: columns padded to their widest cell, figures flush right, a rule under the head. */
export function textTable(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  figures: readonly boolean[],
): string {
  const widths = head.map((title, column) =>
    Math.max(widthOf(title), ...rows.map((row) => widthOf(row[column] ?? ''))),
  )
  const written = (cells: readonly string[]) =>
    widths
      .map((width, column) => padded(cells[column] ?? '', width, figures[column] ?? false))
      .join('  ')
      .trimEnd()
  const rule = widths.map((width) => '─'.repeat(width)).join('  ')
  return [written(head), rule, ...rows.map(written)].join('\n')
}

const widthOf = (text: string) => [...text].length

function padded(text: string, width: number, right: boolean): string {
  const space = ' '.repeat(Math.max(0, width - widthOf(text)))
  return right ? space + text : text + space
}
