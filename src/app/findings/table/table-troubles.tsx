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
import type { Meaning } from './table-choices.ts'

interface TableTroublesProps {
  troubles: readonly CsvTrouble[]
  wide: WideOffer | null
  onTurn: (response: string) => void
  /** Answers a question about how the table is to be read. */
  onAnswer: (key: string, answer: string) => void
  onMeaning: (column: string, meaning: Meaning) => void
}

const mostShown = 40

const questions: readonly CsvTrouble['reason'][] = ['row-twice', 'foot-row', 'alike-names']

/** Everything that keeps the table from being read: questions with their answers, then what is to mend, and the way out of a wide one. */
export function TableTroubles(props: TableTroublesProps) {
  const { troubles, wide, onTurn, onAnswer, onMeaning } = props
  const asked = troubles.filter(({ reason }) => questions.includes(reason))
  const toMend = troubles.filter(({ reason }) => !questions.includes(reason))
  const shown = toMend.slice(0, mostShown)
  return (
    <>
      {wide ? <Turn wide={wide} onTurn={onTurn} /> : null}
      {asked.map((trouble) => (
        <Question
          key={`${trouble.reason} ${trouble.column}`}
          trouble={trouble}
          onAnswer={onAnswer}
          onMeaning={onMeaning}
        />
      ))}
      {toMend.length === 0 ? null : (
        <ErrorNote
          title={`${asSentenceStart(countText(toMend.length, 'thing'))} to mend before it can be read`}
        >
          <ul className={styles.plainList}>
            {shown.map((trouble) => (
              <li key={`${trouble.reason} ${trouble.row} ${trouble.column} ${trouble.text}`}>
                {asSentenceStart(csvTroubleText(trouble))}
              </li>
            ))}
          </ul>
          {toMend.length > shown.length ? (
            <p>And {countText(toMend.length - shown.length, 'more', 'more')}.</p>
          ) : null}
        </ErrorNote>
      )}
    </>
  )
}

type QuestionProps = Pick<TableTroublesProps, 'onAnswer' | 'onMeaning'> & { trouble: CsvTrouble }

const answers: Readonly<
  Partial<Record<CsvTrouble['reason'], readonly [string, string, string][]>>
> = {
  'foot-row': [
    ['foot', 'leave-out', 'Leave it out'],
    ['foot', 'keep', 'Keep it'],
  ],
  'alike-names': [
    ['alike', 'one', 'They are one'],
    ['alike', 'two', 'They are two'],
  ],
  'row-twice': [['repeats', 'replicates', 'Every row is a dough or loaf of its own']],
}

/** One question about how the table is to be read, each answer a press. */
function Question({ trouble, onAnswer, onMeaning }: QuestionProps) {
  const { column, reason, role } = trouble
  return (
    <Notice kind="know" title="How is this to be read?">
      <div className={styles.stack}>
        <p>{asSentenceStart(csvTroubleText(trouble))}</p>
        <div className={styles.tools}>
          {reason === 'row-twice' && column !== null && role !== undefined ? (
            <Button kind="primary" onPress={() => onMeaning(column, role)}>
              {`“${column}” is the ${role}`}
            </Button>
          ) : null}
          {(answers[reason] ?? []).map(([key, answer, label]) => (
            <Button key={answer} onPress={() => onAnswer(key, answer)}>
              {label}
            </Button>
          ))}
        </div>
      </div>
    </Notice>
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
