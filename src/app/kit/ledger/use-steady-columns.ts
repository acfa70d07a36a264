import { useSlowToShrink } from '@/app/kit/look/use-slow-to-shrink.ts'
import type { LedgerColumn, LedgerRow } from './ledger-row.ts'

export interface SteadyColumns {
  /** What each column of figures takes. */
  columnSizes: string[]
  /** What all of them take. */
  size: string
}

const settleMilliseconds = 2000

/**
 * Columns that keep their width while figures change: room for the longest figure, or for a longer head, growing at once and
 * shrinking after a while. In digits of the figures’ own size, with the padding of a cell, which the last column lacks at its end. Nothing for a table that is not `live`.
 */
export function useSteadyColumns(
  live: boolean,
  columns: readonly LedgerColumn[],
  rows: readonly LedgerRow[],
): SteadyColumns | null {
  const longest = live ? Math.max(0, ...rows.flatMap(({ cells }) => cells.map(lengthOf))) : 0
  const digits = useSlowToShrink(longest, columns.length, settleMilliseconds)
  if (!live) return null
  const sizes = columns.map(({ headLength = 0 }) => Math.max(digits, headLength))
  const widthOf = (all: number, paddings: number) =>
    `calc(${all} * var(--digit) + ${paddings} * var(--space-3))`
  const all = sizes.reduce((sum, each) => sum + each, 0)
  return {
    columnSizes: sizes.map((each, at) => widthOf(each, at === sizes.length - 1 ? 1 : 2)),
    size: widthOf(all, 2 * sizes.length - 1),
  }
}

function lengthOf(cell: unknown): number {
  return typeof cell === 'string' ? digitsOf(cell) : 0
}

/** How many digits wide a text is; a point takes little more than half of one. */
export function digitsOf(text: string): number {
  return text.length - (text.includes('.') ? 0.4 : 0)
}
