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
import {
  type Cell,
  cellField,
  cellsOf,
  cellTrouble,
  differingCells,
  endsOf,
  endTrouble,
  openCells,
  type Typing,
} from './sheet-cells.ts'
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
  const open = openCells(cells, typing, values)
  const twice = typing === 'again'
  const differ = twice && open.length === 0 ? differingCells(cells, values) : []
  const wrong = cells
    .map((cell) => cellTrouble(cell, values[cellField(typing, cell)] ?? ''))
    .find(Boolean)
  const by = values[twice ? 'againBy' : 'by'] ?? ''
  const settle = ({ code, question }: Cell, text: string) => {
    const cell = { code, question }
    draft.setAll({
      ...values,
      [cellField('first', cell)]: text,
      [cellField('again', cell)]: text,
    })
  }
  const seal = async () => {
    if (open.length > 0) return setProblem(wrong ?? `${open.length} cells are still empty.`)
    if (differ.length > 0) return setProblem('Settle the cells that differ first.')
    const end = ends.map((each) => endTrouble(each, values[each.field] ?? '')).find(Boolean)
    if (end) return setProblem(end)
    if (by.trim() === '') return setProblem('Write who types this, by initials or a code.')
    if (twice && by.trim() === (values.by ?? '').trim())
      return setProblem('The second typing wants another hand; write whose it is.')
    await sealSheet(cells, ends, values, twice)
    draft.clear()
    onSealed()
  }
  const again = () => {
    if (open.length > 0) return setProblem('Type the whole sheet once before it is typed again.')
    if (by.trim() === '') return setProblem('Write who types this, by initials or a code.')
    setProblem('')
    setTyping('again')
  }
  const say = problem || (wrong ?? '')
  return (
    <div className={styles.stack}>
      <h4>{twice ? `${name}’s sheet, by another hand` : `Type in ${name}’s ballot`}</h4>
      <p className={styles.quiet}>
        In the order of the sheet. A number goes on by itself; 0 means left out; the arrow keys go
        back.
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
      {ends.map(({ field, label, codes, order }) => (
        <TextField
          key={field}
          label={label}
          value={values[field] ?? ''}
          maxLength={order ? codes.length * 5 : 3}
          {...(order ? { hint: `All of ${listText(codes)}, with a space between.` } : {})}
          onValue={(text) => {
            draft.set(field, text)
            setProblem('')
          }}
        />
      ))}
      {differ.length > 0 ? <Differences cells={differ} onSettle={settle} /> : null}
      <p role="alert" className={styles.trouble}>
        {say}
      </p>
      <div className={styles.actions}>
        <Button
          kind={open.length === 0 && differ.length === 0 ? 'primary' : 'plain'}
          onPress={seal}
        >
          {open.length > 0 ? `Seal: ${open.length} still to type` : `Seal ${name}’s sheet`}
        </Button>
        {twice ? null : <Button onPress={again}>Again, by another hand</Button>}
      </div>
    </div>
  )
}

/** The cells that two hands read differently, without either's number: the sheet says which it is. */
function Differences({
  cells,
  onSettle,
}: {
  cells: readonly Cell[]
  onSettle: (cell: Cell, text: string) => void
}) {
  return (
    <div className={styles.stack}>
      <p className={styles.lead}>
        {cells.length === 1 ? 'One cell differs.' : `${cells.length} cells differ.`} Look at the
        sheet, and type what it says.
      </p>
      {cells.map((cell) => (
        <TextField
          key={cellField('first', cell)}
          label={`${cell.code}, ${cell.question.name}, as the sheet says`}
          value=""
          maxLength={1}
          onValue={(text) => {
            if (text !== '' && cellTrouble(cell, text) === '') onSettle(cell, text)
          }}
        />
      ))}
    </div>
  )
}
