import type { Level } from '@/core/trial/level.ts'

/** What a tab says of a level: its number in the factor's unit, or the name of a choice's option. */
export function levelWords(level: Pick<Level, 'value' | 'label'>): string {
  return level.value === null ? level.label : String(Number(level.value.toFixed(6)))
}
