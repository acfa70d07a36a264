import styles from './alone.module.css'

interface TurnRowsProps {
  legend: string
  /** What is turned over, one a row; `called` is how a press names it. */
  rows: readonly { key: string; head: string; called: string }[]
  /** What may lie under it; one that was plated twice stands twice. */
  choices: readonly string[]
  /** By row, what was found. */
  found: Readonly<Record<string, string>>
  onFind: (found: Record<string, string | null>) => void
}

/** A row for each plate or dough, a press for each letter or ticket: one that lies elsewhere moves here. */
export function TurnRows({ legend, rows, choices, found, onFind }: TurnRowsProps) {
  const different = [...new Set(choices)]
  const pick = (key: string, choice: string) => {
    const holders = rows.filter((row) => row.key !== key && found[row.key] === choice)
    const room = choices.filter((each) => each === choice).length
    const away = holders.length >= room ? holders.slice(0, 1) : []
    onFind({ ...Object.fromEntries(away.map((row) => [row.key, null])), [key]: choice })
  }
  return (
    <fieldset className={styles.round}>
      <legend>{legend}</legend>
      {rows.map(({ key, head, called }) => (
        <div key={key} className={styles.row}>
          <span className={styles.plate}>{head}</span>
          <div className={styles.choices}>
            {different.map((choice) => {
              const here = found[key] === choice
              const taken = !here && rows.some((row) => found[row.key] === choice)
              return (
                <button
                  key={choice}
                  type="button"
                  className={`${styles.choice} ${taken ? styles.taken : ''}`}
                  aria-pressed={here}
                  aria-label={`${called}: ${choice}`}
                  data-open={found[key] === undefined ? '' : undefined}
                  onClick={() => pick(key, choice)}
                >
                  {choice}
                </button>
              )
            })}
          </div>
        </div>
      ))}
    </fieldset>
  )
}
