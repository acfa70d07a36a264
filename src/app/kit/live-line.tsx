import { memo, useDeferredValue, useRef } from 'react'
import { LedgerLine, type LineProps, saysTheSame } from './ledger-line.tsx'
import { useInSight } from './use-in-sight.ts'

/** A line that changes with every key: out of sight it follows a moment later, so that what is seen never waits for it. */
export const LiveLine = memo(function LiveLine({ columns, row }: LineProps) {
  const ref = useRef<HTMLTableRowElement>(null)
  const inSight = useInSight(ref)
  const later = useDeferredValue(row)
  return <LedgerLine ref={ref} columns={columns} row={inSight ? row : later} />
}, saysTheSame)
