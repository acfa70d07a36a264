import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { workedInSession } from '@/core/whole-trial/worked-in-session.ts'

/**
 * The level as handled of every batch (with dusting flour, water on hands and oil), in the factor's unit; null where
 * weights or handling were not logged.
 */
export function handledLevels(
  whole: WholeTrial,
): (batchId: string, levelId: string) => number | null {
  const known = new Map<string, number>()
  for (const session of whole.sessions) {
    for (const { batchId, levelId, handled } of workedInSession(whole, session)) {
      if (handled !== null) known.set(`${batchId} ${levelId}`, handled)
    }
  }
  return (batchId, levelId) => known.get(`${batchId} ${levelId}`) ?? null
}
