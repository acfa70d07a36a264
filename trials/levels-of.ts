import type { Level } from '@/core/trial/level.ts'

/** Levels of a sample by their values; one of them is the control. */
export function levelsOf(newId: () => string, values: readonly number[], control: number): Level[] {
  return values.map((value) => ({
    id: newId(),
    value,
    label: String(value),
    control: value === control,
  }))
}
