import type { Level } from './level.ts'

/** The level the others are scaled against: the control, else the middle one by value (by place for a choice). */
export function referenceLevel(levels: readonly Level[]): Level | null {
  const control = levels.find((level) => level.control)
  if (control) return control
  const measured = levels.every(({ value }) => value !== null)
  const inOrder = measured ? levels.toSorted((a, b) => (a.value ?? 0) - (b.value ?? 0)) : levels
  return inOrder[Math.floor((inOrder.length - 1) / 2)] ?? null
}
