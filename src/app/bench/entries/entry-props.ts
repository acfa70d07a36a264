import type { TemperatureOf } from '@/core/session/press/usual-readings.ts'

export interface BenchUnit {
  kind: 'batch' | 'piece'
  id: string
}

export interface EntryProps {
  unit: BenchUnit
  onKept: () => void
  /** Which reading the moment asked for, where it asked for one. */
  of?: TemperatureOf | undefined
  /** What a photo is of, where the moment asked for one. */
  caption?: string | undefined
}
