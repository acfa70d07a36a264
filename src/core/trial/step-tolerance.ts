import type { Step } from './step.ts'

/**
 * How much sooner and later than planned a step's wait may end, in seconds. What ends by a mark or a reading is never early:
 * nobody can end a rise before it is there.
 */
export function stepTolerance({
  endsBy,
  earlySeconds,
  lateSeconds,
}: Pick<Step, 'endsBy' | 'earlySeconds' | 'lateSeconds'>): {
  earlySeconds: number
  lateSeconds: number
} {
  return { earlySeconds: endsBy.by === 'clock' ? earlySeconds : 0, lateSeconds }
}
