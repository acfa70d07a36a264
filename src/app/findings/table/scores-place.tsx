import { useCallback, useState } from 'react'
import styles from '@/app/findings/findings.module.css'
import { useDraft } from '@/app/kit/field/use-draft.ts'
import { Notice } from '@/app/kit/page/notice.tsx'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Progress } from '@/app/kit/page/progress.tsx'
import { FileButton } from '@/app/kit/press/file-button.tsx'
import { draftsOf } from '@/app/services/drafts-of.ts'
import { longestKept, scoresDraftKey, tableText } from '@/app/services/scores-draft.ts'
import { useServices } from '@/app/services/services.ts'
import { thousandsText } from '@/core/units/number-text.ts'
import { DropBox } from './drop-box.tsx'
import { TablePage } from './table-page.tsx'

/** Scores from elsewhere: a table is chosen or dropped, its columns are named, and the findings stand over it. */
export function ScoresPlace() {
  const { notebook } = useServices()
  const draft = useDraft(draftsOf(notebook, scoresDraftKey, 'The table of scores'))
  const [long, setLong] = useState<string | null>(null)
  const { setAll } = draft
  const take = useCallback(
    async ([file]: File[]) => {
      if (!file) return
      const text = await tableText(file)
      const kept = text.length <= longestKept
      setLong(kept ? null : text)
      setAll({ name: file.name, ...(kept ? { text } : {}) })
    },
    [setAll],
  )
  if (!draft.ready) return <Progress label="Opening the table" done={null} />
  const { name = '', text = long, ...choices } = draft.values
  return (
    <DropBox onFiles={take}>
      <PageHeading>Scores from elsewhere</PageHeading>
      {text === null ? (
        <div className={styles.stack}>
          <p className={styles.words}>
            A table kept in a spreadsheet, saved as CSV: one row for each session, flight, level and
            taster, headings in the first row, and a column of numbers for each response. It stays
            on this device. Choose it, or drop it here.
          </p>
          {name === '' ? null : (
            <Notice kind="know" title="Choose it once more">
              {`${name} is longer than this device keeps from page to page (${thousandsText(longestKept)} characters). It is read all the same.`}
            </Notice>
          )}
          <FileButton kind="primary" accept=".csv,.tsv,.txt,text/csv" onFiles={take}>
            Choose a table
          </FileButton>
        </div>
      ) : (
        <TablePage
          name={name}
          text={text}
          choices={choices}
          onChoices={(next) => setAll({ name, ...(long === null ? { text } : {}), ...next })}
          onClose={() => {
            setLong(null)
            draft.clear()
          }}
          another={
            <FileButton accept=".csv,.tsv,.txt,text/csv" onFiles={take}>
              Choose another table
            </FileButton>
          }
          unkept={long !== null}
        />
      )}
    </DropBox>
  )
}
