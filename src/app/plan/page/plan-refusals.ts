import { lockedChanges } from '@/core/plan-edits/lock/locked-change.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { lockedText } from '@/core/wording/plan/locked-text.ts'
import { lockedSince } from './locked-since.ts'

/** Why the lock of the trial refuses a change of its plan, in words; null when it allows it. */
export function lockedRefusal(
  { events }: Pick<WholeTrial, 'events'>,
  before: Plan,
  next: Plan,
): string | null {
  if (lockedSince(events) === null) return null
  const changes = lockedChanges(before, next)
  return changes.length > 0 ? lockedText(changes) : null
}
