import type { ArchiveColumn } from './archive-table.ts'

/** A column of words. */
export const text = (name: string, meaning: string): ArchiveColumn => ({
  ...{ name, meaning, unit: '', type: 'text' },
})
/** A column of numbers in a unit. */
export const number = (name: string, meaning: string, unit = ''): ArchiveColumn => ({
  ...{ name, meaning, unit, type: 'number' },
})
/** A column of counts. */
export const whole = (name: string, meaning: string): ArchiveColumn => ({
  ...{ name, meaning, unit: '', type: 'whole number' },
})
/** A column of moments. */
export const time = (name: string, meaning: string): ArchiveColumn => ({
  ...{ name, meaning, unit: '', type: 'time (UTC)' },
})

/** A moment as the archive writes it: ISO 8601, UTC. */
export const moment = (at: number) => new Date(at).toISOString()
