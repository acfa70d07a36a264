import { SelectField } from '@/app/kit/field/select-field.tsx'
import type { CsvColumn } from '@/core/findings/table/csv-columns.ts'
import type { CsvGrid } from '@/core/findings/table/csv-grid.ts'
import { type Meaning, meanings } from './table-choices.ts'
import styles from './table-preview.module.css'

interface TablePreviewProps {
  grid: CsvGrid
  columns: readonly CsvColumn[]
  /** Columns that have been turned into rows, each a level. */
  turned: readonly string[]
  onMeaning: (column: string, meaning: Meaning) => void
}

const firstRows = 6

/** The first rows as they were read, each column's meaning under its heading, to be chosen from a list. */
export function TablePreview({ grid, columns, turned, onMeaning }: TablePreviewProps) {
  const meaningOf = (heading: string) => {
    const role = columns.find((column) => column.heading === heading)?.role ?? 'ignore'
    return role === 'text' ? 'ignore' : role
  }
  const shown = grid.rows.slice(0, firstRows)
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reachable by keyboard
    <section className={styles.box} aria-label="The first rows" tabIndex={0}>
      <table className={styles.table}>
        <caption className={styles.caption}>
          The first {shown.length} of {grid.rows.length} rows, and what each column means
        </caption>
        <thead>
          <tr>
            <th scope="col">Row</th>
            {grid.header.map((heading, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: columns of a table from elsewhere have no other name and never move
              <th key={index} scope="col">
                {heading}
                {turned.includes(heading) ? <p>a level</p> : null}
                {turned.includes(heading) ? null : (
                  <SelectField
                    label={`Meaning of ${heading}`}
                    hideLabel
                    value={meaningOf(heading)}
                    options={meanings}
                    onValue={(meaning) => onMeaning(heading, meaning)}
                  />
                )}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {shown.map(({ number, cells }) => (
            <tr key={number}>
              <th scope="row">{number}</th>
              {cells.map((cell, index) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a cell is known by its column alone
                <td key={index}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
