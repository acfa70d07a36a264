import { memo, type ReactNode, useMemo, useState } from 'react'
import { ForwardMark } from '@/app/kit/look/forward-mark.tsx'
import unseen from '@/app/kit/look/unseen.module.css'
import { useCurrentLevel } from '@/app/kit/rail/current-level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { massName } from '@/core/units/mass-text.ts'
import type { SheetRow, WeighSheet } from '@/core/weighing/weigh-sheet.ts'
import type { WrittenRow } from '@/core/weighing/written-sheet.ts'
import { asSentenceStart } from '@/core/wording/words/list-text.ts'
import { PercentValue, ShareValue } from './percent-value.tsx'
import styles from './weigh-ledger.module.css'

interface WeighLedgerProps {
  sheet: WeighSheet
  plan: Plan
  columns: readonly { key: string; head: ReactNode }[]
  rows: readonly WrittenRow[]
}

/**
 * Formula and weigh sheet as one ledger: what goes in, its percent of the flour (a press opens its field in place), and the
 * grams of each dough. On a phone name and percent stand over the grams.
 */
export function WeighLedger({ sheet, plan, columns, rows }: WeighLedgerProps) {
  const lit = useCurrentLevel((state) => state.levelId)
  const [shown, setShown] = useState<readonly string[]>([])
  const sheetRows = useMemo(() => new Map(sheet.rows.map((row) => [row.key, row])), [sheet.rows])
  const isPart = (row: SheetRow | undefined) =>
    row?.into === 'preferment' && row.prefermentId !== null
  const litAt = columns.findIndex(({ key }) => key === lit)
  return (
    <table className={styles.ledger} style={{ ['--columns' as string]: perLine(columns.length) }}>
      <caption className={unseen.unseen}>{asSentenceStart(massName())} for each batch</caption>
      <thead>
        <tr>
          <th scope="col">
            <span className={styles.head}>
              <span className={styles.small}>{massName()} of each dough</span>
              <span>% of flour</span>
            </span>
          </th>
          {columns.map(({ key, head }) => (
            <th
              key={key}
              scope="col"
              className={`${styles.figure} ${key === lit ? styles.litHead : ''}`}
            >
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => {
          const of = sheetRows.get(row.key)
          return (
            <Line
              key={row.key}
              row={row}
              of={of}
              plan={plan}
              litAt={litAt}
              hidden={isPart(of) && !shown.includes(of?.prefermentId ?? '')}
              partsShown={of?.prefermentId != null && shown.includes(of.prefermentId)}
              onParts={(prefermentId, show) =>
                setShown((now) => [
                  ...now.filter((id) => id !== prefermentId),
                  ...(show ? [prefermentId] : []),
                ])
              }
            />
          )
        })}
      </tbody>
    </table>
  )
}

/** On a phone: all levels in one line up to five, from six on in two. */
const perLine = (count: number) => (count <= 5 ? count : Math.ceil(count / 2))

interface LineProps {
  row: WrittenRow
  of: SheetRow | undefined
  plan: Plan
  litAt: number
  /** A part of a preferment that is not asked for: it stands in the sheet and is printed with it. */
  hidden: boolean
  partsShown: boolean
  onParts: (prefermentId: string, show: boolean) => void
}

const Line = memo(
  function Line({ row, of, plan, litAt, hidden, partsShown, onParts }: LineProps) {
    const whole = of?.what === 'all-of-preferment' ? of.prefermentId : null
    const isSum = of === undefined && !row.quiet
    const part = of?.into === 'preferment' && whole === null
    return (
      <tr
        className={[
          row.quiet && whole === null ? styles.quiet : '',
          row.key === 'dough' || isSum ? styles.sum : '',
          part ? styles.part : '',
          hidden ? styles.hidden : '',
        ].join(' ')}
      >
        <th scope="row">
          <span className={styles.head}>
            {whole === null ? (
              <span>{row.head}</span>
            ) : (
              <button
                type="button"
                className={styles.parts}
                aria-expanded={partsShown}
                onClick={() => onParts(whole, !partsShown)}
              >
                {row.head}
                <ForwardMark turned={partsShown} />
              </button>
            )}
            <small className={styles.beside}>
              <Percent of={of} plan={plan} />
            </small>
          </span>
        </th>
        {row.cells.map((cell, at) => (
          <td
            // biome-ignore lint/suspicious/noArrayIndexKey: a cell is its column
            key={at}
            className={`${styles.figure} ${at === litAt ? styles.lit : ''}`}
          >
            {cell}
          </td>
        ))}
      </tr>
    )
  },
  (before, now) =>
    before.litAt === now.litAt &&
    before.hidden === now.hidden &&
    before.partsShown === now.partsShown &&
    before.row.head === now.row.head &&
    before.row.cells.length === now.row.cells.length &&
    before.row.cells.every((cell, at) => cell === now.row.cells[at]) &&
    before.plan.formula === now.plan.formula &&
    before.plan.factor === now.plan.factor,
)

function Percent({ of, plan }: { of: SheetRow | undefined; plan: Plan }) {
  if (!of) return null
  if (of.what === 'all-of-preferment') {
    const index = plan.formula.preferments.findIndex(({ id }) => id === of.prefermentId)
    const preferment = plan.formula.preferments[index]
    return preferment ? <ShareValue preferment={preferment} index={index} /> : null
  }
  if (of.into === 'preferment') return null
  const index = plan.formula.ingredients.findIndex(({ id }) => id === of.ingredientId)
  const ingredient = plan.formula.ingredients[index]
  return ingredient ? <PercentValue ingredient={ingredient} index={index} /> : null
}
