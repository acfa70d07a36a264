import { type KeyboardEvent, useRef } from 'react'
import { type Cell, cellField, cellTrouble, type Typing } from './sheet-cells.ts'
import styles from './sheet-grid.module.css'

interface SheetGridProps {
  cells: readonly Cell[]
  typing: Typing
  values: Readonly<Record<string, string>>
  onType: (cell: Cell, text: string) => void
}

/** A sheet as a grid: a digit goes on to the next cell by itself, the arrow keys go about. */
export function SheetGrid({ cells, typing, values, onType }: SheetGridProps) {
  const grid = useRef<HTMLTableElement>(null)
  const codes = [...new Set(cells.map(({ code }) => code))]
  const questions = cells.filter(({ code }) => code === codes[0]).map(({ question }) => question)
  const go = (from: number, by: number) => {
    const inputs = grid.current?.querySelectorAll('input')
    inputs?.[from + by]?.focus()
    inputs?.[from + by]?.select()
  }
  const key = (at: number) => (event: KeyboardEvent) => {
    const by = {
      ArrowUp: -questions.length,
      ArrowDown: questions.length,
      ArrowLeft: -1,
      ArrowRight: 1,
    }[event.key]
    if (by === undefined) return
    event.preventDefault()
    go(at, by)
  }
  return (
    <div className={styles.scroller}>
      <table className={styles.grid} ref={grid}>
        <thead>
          <tr>
            <th scope="col">Code</th>
            {questions.map(({ responseId, name }) => (
              <th key={responseId} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {codes.map((code, row) => (
            <tr key={code}>
              <th scope="row">
                <b>{code}</b> {row + 1} of {codes.length}
              </th>
              {questions.map((question, column) => {
                const cell = { code, question }
                const at = row * questions.length + column
                const text = values[cellField(typing, cell)] ?? ''
                const measured = question.scale.kind === 'measured'
                return (
                  <td key={question.responseId}>
                    <input
                      inputMode={measured ? 'decimal' : 'numeric'}
                      aria-label={`${code}, ${question.name}`}
                      aria-invalid={cellTrouble(cell, text) === '' ? undefined : true}
                      maxLength={measured ? 8 : 1}
                      value={text}
                      onFocus={(event) => event.target.select()}
                      onKeyDown={key(at)}
                      onChange={(change) => {
                        const typed = change.target.value.replace(/[^0-9.,-]/g, '')
                        onType(cell, typed)
                        if (!measured && typed !== '' && cellTrouble(cell, typed) === '') go(at, 1)
                      }}
                    />
                  </td>
                )
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}
