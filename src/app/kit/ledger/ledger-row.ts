import type { ReactNode } from 'react'

export interface LedgerColumn {
  key: string
  head: ReactNode
  unit?: string
  align?: 'figure' | 'text'
  /** Of a live table: how many digits of a figure the head takes. */
  headLength?: number
}

export interface LedgerRow {
  key: string
  head: ReactNode
  cells: ReactNode[]
  /** Set smaller and lighter: sums, achieved values, remarks. */
  quiet?: boolean
  /** The levels it speaks of, by id: it is lit with them. */
  levelIds?: readonly string[]
}
