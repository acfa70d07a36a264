import type { ReactNode } from 'react'
import { Button } from '@/app/kit/press/button.tsx'
import { clockWords, presenceWords } from '@/core/wording/table/table-text.ts'
import type { TableSeat } from './seats-of-table.ts'
import styles from './table.module.css'

interface SeatRowProps {
  name: string
  sees: string
  seat: TableSeat
  shown: boolean
  onShow: () => void
  /** Its code, where it is shown under the row. */
  code: ReactNode
}

/** One part or taster: what it may see or how far it is, who holds it, what is still to come from there. */
export function SeatRow({ name, sees, seat, shown, onShow, code }: SeatRowProps) {
  const { presence, toCome, devices, part, clockLater } = seat
  const coming =
    toCome === 0
      ? ''
      : toCome === 1
        ? '; one entry is still to come'
        : `; ${toCome} entries are still to come`
  return (
    <li className={styles.row}>
      <span className={styles.name}>{name}</span>
      <span className={styles.said}>
        <span className={styles.soft}>{sees}</span>
        <span>
          {presenceWords(presence)}
          {coming}
        </span>
        {clockLater === null ? null : <span>{clockWords(clockLater)}</span>}
        {devices > 1 ? (
          <span>{devices} devices use this one code: give the other a code of its own.</span>
        ) : null}
      </span>
      <span className={styles.presses}>
        <Button
          pressed={shown}
          means={shown ? 'hide' : 'show'}
          label={part === 'taster' ? `Show code for ${name}` : `Show code of ${name}`}
          onPress={onShow}
        >
          Show code
        </Button>
      </span>
      {code ? <div className={styles.under}>{code}</div> : null}
    </li>
  )
}
