import { lockedChanges } from '@/core/plan-edits/lock/locked-change.ts'
import { locked } from '@/core/seal/lock.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { lockedText } from '@/core/wording/plan/locked-text.ts'

/** Why the lock of the trial refuses a change of its plan, in words; null when it allows it. */
export function lockedRefusal(whole: WholeTrial, before: Plan, next: Plan): string | null {
  if (!locked(whole)) return null
  const changes = lockedChanges(before, next)
  return changes.length > 0 ? lockedText(changes) : null
}
