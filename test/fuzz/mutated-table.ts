import { type Chance, wholeBetween } from '@/core/design/chance.ts'

const pick = <Item>(chance: Chance, items: readonly Item[]): Item => {
  const item = items[wholeBetween(chance, 0, items.length - 1)]
  if (item === undefined) throw new Error('nothing to pick from')
  return item
}

/** What stands in cells of tables that people keep. */
const cells = [
  ...['', ' ', 'NA', 'n/a', '-', '–', '0', '-3', '1e155', '1e308', '-1e308', '1e-320', 'Infinity'],
  ...['7,5', '7.5', '65 %', '65%', '65C', '1/2', '½', '"', '""', "'", ';', '\t', '=1+1', '+7', 'ü'],
  ...['x'.repeat(190), '😀', '\u0000', 'mean', 'A', 'a', '１２'],
]

/** A tenth past what is read: longer ones keep this program busy and not the reader. */
const mostRowsMade = 550_000

type Rows = string[][]
type Change = (chance: Chance, rows: Rows) => Rows

const rowOf = (chance: Chance, rows: Rows) => rows[wholeBetween(chance, 0, rows.length - 1)] ?? []

const changes: readonly Change[] = [
  (chance, rows) => {
    const row = rowOf(chance, rows)
    row[wholeBetween(chance, 0, row.length)] = pick(chance, cells)
    return rows
  },
  (chance, rows) => {
    rows.push([...rowOf(chance, rows)])
    return rows
  },
  (chance, rows) => rows.toSpliced(wholeBetween(chance, 0, rows.length - 1), 1),
  (chance, rows) => {
    const column = wholeBetween(chance, 0, 5)
    return rows.map((row) => row.toSpliced(column, 1))
  },
  (chance, rows) => {
    const column = wholeBetween(chance, 0, 5)
    return rows.map((row) => row.toSpliced(column, 0, row[column] ?? pick(chance, cells)))
  },
  (chance, rows) => {
    const column = wholeBetween(chance, 0, 5)
    const cell = pick(chance, cells)
    return rows.map((row, index) =>
      index === 0 ? row : row.with(Math.min(column, row.length - 1), cell),
    )
  },
  (chance, rows) => {
    const body = rows.slice(1)
    const times = pick(chance, [2, 10, 60])
    if (body.length * times > mostRowsMade) return rows
    return [
      rows[0] ?? [],
      ...Array.from({ length: times }, () => body.map((row) => [...row])).flat(),
    ]
  },
  (_, rows) => rows.slice(1),
  (_, rows) => (rows[0] ?? []).map((_, column) => rows.map((row) => row[column] ?? '')),
]

/** A table of scores with one to five changes, joined by one of the marks that tables are kept with. */
export function mutatedTable(chance: Chance, table: readonly (readonly string[])[]): string {
  let rows: Rows = table.map((row) => [...row])
  for (let left = wholeBetween(chance, 1, 5); left > 0; left -= 1) {
    if (rows.length === 0 || rows.every((row) => row.length === 0)) break
    rows = pick(chance, changes)(
      chance,
      rows.map((row) => (row.length === 0 ? [''] : row)),
    )
  }
  const between = pick(chance, [',', ';', '\t', ',', ';'])
  return rows.map((row) => row.join(between)).join(pick(chance, ['\n', '\r\n', '\n']))
}
