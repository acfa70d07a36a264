import { memo, useDeferredValue, useRef } from 'react'
import { useInSight } from '@/app/kit/look/use-in-sight.ts'
import { LedgerLine, type LineProps, saysTheSame } from './ledger-line.tsx'
import type { LedgerRow } from './ledger-row.ts'

interface LiveLineProps extends LineProps {
  /** Places of the columns that are scrolled out of the table's box. */
  outside: ReadonlySet<number>
}

/**
 * A line that changes with every key: where it is out of sight, as a whole or in some columns, it follows a moment later, so
 * that what is seen never waits for it.
 */
export const LiveLine = memo(
  function LiveLine({ columns, row, lit = null, outside }: LiveLineProps) {
    const ref = useRef<HTMLTableRowElement>(null)
    const inSight = useInSight(ref)
    const later = useDeferredValue(row)
    const shown = inSight ? seenOf(row, later, outside) : later
    return <LedgerLine ref={ref} columns={columns} row={shown} lit={lit} />
  },
  (before, now) => before.outside === now.outside && saysTheSame(before, now),
)

function seenOf(row: LedgerRow, later: LedgerRow, outside: ReadonlySet<number>): LedgerRow {
  if (row === later || outside.size === 0) return row
  return { ...row, cells: row.cells.map((cell, at) => (outside.has(at) ? later.cells[at] : cell)) }
}
