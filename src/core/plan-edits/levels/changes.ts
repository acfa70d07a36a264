import type { Change, Level } from '@/core/trial/level.ts'

/** An option with other differences; without any, it has no such part. */
export function withChanges(level: Level, changes: readonly Change[] | undefined): Level {
  const { changes: _, ...bare } = level
  return changes && changes.length > 0 ? { ...bare, changes: [...changes] } : bare
}
