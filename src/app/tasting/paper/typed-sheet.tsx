import { useState } from 'react'
import { TextField } from '@/app/kit/field/text-field.tsx'
import { useDraft } from '@/app/kit/field/use-draft.ts'
import { Button } from '@/app/kit/press/button.tsx'
import { draftsOf } from '@/app/services/drafts-of.ts'
import { useServices } from '@/app/services/services.ts'
import styles from '@/app/tasting/seat/tasting.module.css'
import { useTable } from '@/app/tasting/tasting-context.ts'
import { blindView } from '@/core/tasting/blind-view.ts'
import { listText } from '@/core/wording/words/list-text.ts'
import { SettleDifferences } from './settle-differences.tsx'
import {
  cellField,
  cellsOf,
  cellTrouble,
  endField,
  endsOf,
  endTrouble,
  openCells,
  type Typing,
} from './sheet-cells.ts'
import { type Difference, differencesOf } from './sheet-differences.ts'
import { SheetGrid } from './sheet-grid.tsx'
import { useSealSheet } from './use-seal-sheet.ts'

interface TypedSheetProps {
  tasterId: string
  name: string
  onSealed: () => void
}

/** One taster's sheet: a grid in their own order, who typed it, and a second typing whose differences are shown before anything is sealed. */
export function TypedSheet({ tasterId, name, onSealed }: TypedSheetProps) {
  const { notebook } = useServices()
  const { whole, session } = useTable()
  const [typing, setTyping] = useState<Typing>('first')
  const [problem, setProblem] = useState('')
  const draft = useDraft(
    draftsOf(notebook, `paper/${session.id}/${tasterId}`, 'A sheet being typed in'),
  )
  const sealSheet = useSealSheet(tasterId)
  if (!draft.ready) return null
  const { values } = draft
  const view = blindView(whole, session.id, tasterId)
  const cells = cellsOf(view)
  const ends = endsOf(view)
  const codes = view.servings.filter(({ done }) => !done).map(({ code }) => code)
  const typed = (field: string) => values[field] ?? ''
  const blank = ends.filter((end) => typed(endField(typing, end)).trim() === '')
  const open = openCells(cells, typing, values)
  const left = open.length + blank.length
  const twice = typing === 'again'
  const wrong = cells.map((cell) => cellTrouble(cell, typed(cellField(typing, cell)))).find(Boolean)
  const wrongEnd = ends.map((end) => endTrouble(end, typed(endField(typing, end)))).find(Boolean)
  const differ = twice && left === 0 && !wrongEnd ? differencesOf(cells, ends, values) : []
  const by = values[twice ? 'againBy' : 'by'] ?? ''
  const settle = ({ fields }: Difference, text: string) =>
    draft.setAll({ ...values, [fields.first]: text, [fields.again]: text })
  /** What keeps this typing from being whole; null where it is. */
  const missing = (): string | null => {
    if (open.length > 0) return wrong ?? stillEmpty(open.length)
    if (wrongEnd) return wrongEnd
    return by.trim() === '' ? 'Write who types this, by initials or a code.' : null
  }
  const seal = async () => {
    const lacks = missing()
    if (lacks !== null) return setProblem(lacks)
    if (twice && by.trim() === typed('by').trim())
      return setProblem('The second typing wants another hand; write whose it is.')
    if (differ.length > 0) return setProblem('Settle what differs first.')
    await sealSheet({ codes, cells, ends, texts: values, twice })
    draft.clear()
    onSealed()
  }
  const again = () => {
    const lacks = missing()
    if (lacks !== null) return setProblem(`Type the whole sheet once first. ${lacks}`)
    setProblem('')
    setTyping('again')
  }
  const say = problem || (wrong ?? '')
  return (
    <div className={styles.stack}>
      <h4>{twice ? `${name}’s sheet, by another hand` : `Type in ${name}’s ballot`}</h4>
      <p className={styles.quiet}>
        {cells.length > 0
          ? 'In the order of the sheet. A number goes on by itself; 0 means left out; the arrow keys go back.'
          : 'Nothing is scored of each sample: that they were tasted is kept with the sheet.'}
      </p>
      <TextField
        label={twice ? 'Typed again by' : 'Typed by'}
        value={by}
        onValue={(text) => {
          draft.set(twice ? 'againBy' : 'by', text)
          setProblem('')
        }}
        maxLength={40}
      />
      {cells.length > 0 ? (
        <SheetGrid
          key={typing}
          cells={cells}
          typing={typing}
          values={values}
          onType={(cell, text) => {
            draft.set(cellField(typing, cell), text)
            setProblem('')
          }}
        />
      ) : null}
      {ends.map((end) => (
        <TextField
          key={endField(typing, end)}
          label={end.label}
          value={typed(endField(typing, end))}
          maxLength={end.order ? end.codes.length * 6 : 3}
          {...(end.order ? { hint: `All of ${listText(end.codes)}, with a space between.` } : {})}
          onValue={(text) => {
            draft.set(endField(typing, end), text)
            setProblem('')
          }}
        />
      ))}
      {differ.length > 0 ? <SettleDifferences differences={differ} onSettle={settle} /> : null}
      <p role="alert" className={styles.trouble}>
        {say}
      </p>
      <div className={styles.actions}>
        <Button kind={left === 0 && differ.length === 0 ? 'primary' : 'plain'} onPress={seal}>
          {left > 0 ? `Seal: ${left} still to type` : `Seal ${name}’s sheet`}
        </Button>
        {twice ? null : <Button onPress={again}>Again, by another hand</Button>}
      </div>
    </div>
  )
}

const stillEmpty = (count: number) =>
  count === 1 ? 'One cell is still empty.' : `${count} cells are still empty.`
