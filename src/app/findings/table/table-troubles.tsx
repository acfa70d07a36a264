import { useState } from 'react'
import styles from '@/app/findings/findings.module.css'
import { TextField } from '@/app/kit/field/text-field.tsx'
import { ErrorNote } from '@/app/kit/page/error-note.tsx'
import { Notice } from '@/app/kit/page/notice.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import type { CsvTrouble } from '@/core/findings/table/csv-trouble.ts'
import type { WideOffer } from '@/core/findings/table/csv-wide.ts'
import { csvTroubleText, wideOfferText } from '@/core/wording/files/csv-trouble-text.ts'
import { asSentenceStart, countText } from '@/core/wording/words/list-text.ts'

interface TableTroublesProps {
  troubles: readonly CsvTrouble[]
  wide: WideOffer | null
  onTurn: (response: string) => void
}

const mostShown = 40

/** Everything that keeps the table from being read, by row and column, all at once; and the way out of a wide one. */
export function TableTroubles({ troubles, wide, onTurn }: TableTroublesProps) {
  const repeated = troubles.filter(({ reason }) => reason === 'row-twice')
  const inTurn = [...troubles.filter(({ reason }) => reason !== 'row-twice'), ...repeated]
  const shown = inTurn.slice(0, mostShown)
  return (
    <>
      {wide ? <Turn wide={wide} onTurn={onTurn} /> : null}
      <ErrorNote
        title={`${asSentenceStart(countText(troubles.length, 'thing'))} to mend before it can be read`}
      >
        {repeated.length > 1 ? (
          <p>
            Where rows repeat, a column that says who tasted, or in which session or flight, may
            still need its meaning: choose it over the column.
          </p>
        ) : null}
        <ul className={styles.plainList}>
          {shown.map((trouble) => (
            <li key={`${trouble.reason} ${trouble.row} ${trouble.column} ${trouble.text}`}>
              {asSentenceStart(csvTroubleText(trouble))}
            </li>
          ))}
        </ul>
        {troubles.length > shown.length ? (
          <p>And {countText(troubles.length - shown.length, 'more', 'more')}.</p>
        ) : null}
      </ErrorNote>
    </>
  )
}

function Turn({ wide, onTurn }: { wide: WideOffer; onTurn: (response: string) => void }) {
  const [response, setResponse] = useState('Liking')
  const problem = response.trim() === '' ? 'Say what the scores are of.' : undefined
  return (
    <Notice kind="know" title="One column a level?">
      <div className={styles.stack}>
        <p>{wideOfferText(wide)}</p>
        <TextField
          label="What was scored"
          value={response}
          maxLength={80}
          onValue={setResponse}
          problem={problem}
        />
        <Button disabled={problem !== undefined} onPress={() => onTurn(response.trim())}>
          Turn it into rows
        </Button>
      </div>
    </Notice>
  )
}
