import { LevelTab } from '@/app/kit/rail/level-tab.tsx'
import { usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { lettersOf, useLatestSession } from '@/app/plan/page/use-letters.ts'
import { BatchHead } from '@/app/plan/panels/batch-head.tsx'
import type { WrittenRow, WrittenSheet } from '@/core/weighing/written-sheet.ts'
import type { AsReadLine } from '@/core/wording/weighing/as-read-lines.ts'
import styles from './printed-weigh-sheet.module.css'

interface Props {
  /** Which doughs stand on this page, by their place in the sheet. */
  places: readonly number[]
  batches: readonly { levelId: string | null }[]
  written: WrittenSheet
  asRead: readonly AsReadLine[]
}

/** The lines of the weigh sheet for the doughs of one page, with boxes and blanks, and under them what is read at the mix. */
export function WeighSheetTable({ places, batches, written, asRead }: Props) {
  return (
    <table className={styles.sheet}>
      <thead>
        <tr>
          <td className={styles.names} />
          {places.map((at) => (
            <th key={at} scope="col">
              <DoughHead levelId={batches[at]?.levelId ?? null} />
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {written.weights.map((row) => (
          <Line key={row.key} row={row} places={places} boxed blanks={row.quiet ? 0 : 1} />
        ))}
        {written.comesTo.map((row) => (
          <Line key={row.key} row={row} places={places} blanks={row.key === 'dough' ? 1 : 0} />
        ))}
      </tbody>
      <tbody className={styles.asRead}>
        {asRead.map((line) => (
          <Line key={line.key} row={line} places={places} blanks={line.blanks} />
        ))}
      </tbody>
    </table>
  )
}

/** A dough by its letter in the session and its level; one dough for all has neither. */
function DoughHead({ levelId }: { levelId: string | null }) {
  const levels = usePlanPage((page) => page.plan.levels)
  const letters = lettersOf(useLatestSession())
  if (levelId === null) return <BatchHead levels={levels} levelId={null} />
  return <LevelTab levels={levels} levelId={levelId} letter={letters.get(levelId)} />
}

interface LineProps {
  row: Pick<WrittenRow, 'key' | 'head' | 'cells'>
  places: readonly number[]
  boxed?: boolean
  blanks: 0 | 1 | 2
}

const takesNone = '–'

/** One line; a dough that takes none of it has nothing to tick there. */
function Line({ row, places, boxed = false, blanks }: LineProps) {
  return (
    <tr className={row.key === 'dough' ? styles.sum : ''}>
      <th scope="row">{row.head}</th>
      {places.map((at) => {
        const text = row.cells[at] ?? ''
        const taken = text !== takesNone
        return (
          <td key={at}>
            <span className={styles.cell}>
              {boxed && taken ? <i className={styles.box} /> : null}
              <b>{text}</b>
              {taken && blanks > 0 ? <i className={styles.blank} /> : null}
              {taken && blanks > 1 ? <i className={styles.blank} /> : null}
            </span>
          </td>
        )
      })}
    </tr>
  )
}
