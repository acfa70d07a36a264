import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import { locked } from '@/core/seal/lock.ts'

/** Whether expectation, main response and the number of sessions are locked: from the first mix on. */
export function useLocked(): boolean {
  return locked(useWholeTrial())
}
