import type { CsvColumn } from './csv-columns.ts'
import type { CsvGrid } from './csv-grid.ts'
import { csvNumber } from './csv-number.ts'
import type { CsvTrouble } from './csv-trouble.ts'
import { isMissing } from './table-number.ts'

const words =
  /^(grand )?(mean|means|average|averages|avg|median|total|totals|sum|sums|sd|s\.d\.|std|stdev|st\.? ?dev\.?|se|s\.e\.|n|count|mittel|mittelwert|durchschnitt|summe|moyenne|moy|media|promedio|gemiddelde)\b/i

/** How many rows from the end may be a foot: means, spread and count under one another. */
const longest = 6

/**
 * Rows at the foot that sum up what stands over them (a cell says mean, average, total, sd …; or numbers stand where all that
 * names a row is blank): asked about, since a mean among the scores would count as one more, or left out.
 */
export function footRows(
  grid: CsvGrid,
  columns: readonly CsvColumn[],
  answer: 'leave-out' | 'keep' | undefined,
): { grid: CsvGrid; troubles: CsvTrouble[] } {
  if (answer === 'keep') return { grid, troubles: [] }
  let at = grid.rows.length
  while (at > 1 && grid.rows.length - at < longest && isFoot(grid, columns, at - 1)) at -= 1
  const [first] = grid.rows.slice(at)
  if (!first) return { grid, troubles: [] }
  if (answer === 'leave-out')
    return { grid: { ...grid, rows: grid.rows.slice(0, at) }, troubles: [] }
  const word = first.cells.find((cell) => words.test(cell))
  const told = { row: first.number, column: null, count: grid.rows.length - at }
  return { grid, troubles: [{ reason: 'foot-row', ...told, ...(word ? { text: word } : {}) }] }
}

function isFoot({ rows }: CsvGrid, columns: readonly CsvColumn[], at: number): boolean {
  const { cells } = rows[at] as CsvGrid['rows'][number]
  const named = columns.filter(({ role }) => role !== 'response' && role !== 'ignore')
  const word = named.find(({ index }) => words.test(cells[index] ?? ''))
  // A taster may be called N or SE: a word counts only where it stands nowhere else in its column.
  if (word)
    return rows.every((row, other) => other >= at || row.cells[word.index] !== cells[word.index])
  const scored = columns.some(
    ({ index, role }) => role === 'response' && csvNumber(cells[index] ?? '') !== null,
  )
  const usual = named.filter(({ role }) => role === 'taster' || role === 'level')
  return scored && usual.length > 0 && named.every(({ index }) => isMissing(cells[index] ?? ''))
}
