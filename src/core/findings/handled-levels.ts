import { workedLevels } from '@/core/session/worked-levels.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/**
 * The level as handled of every batch (with dusting flour, water on hands and oil), in the factor's unit; null where
 * weights or handling were not logged.
 */
export function handledLevels(
  whole: WholeTrial,
): (batchId: string, levelId: string) => number | null {
  const known = new Map<string, number>()
  for (const session of whole.sessions) {
    const plan = planOfSession(whole, session)
    const { events, kitchen } = whole
    for (const { batchId, levelId, handled } of workedLevels({ plan, session, events, kitchen })) {
      if (handled !== null) known.set(`${batchId} ${levelId}`, handled)
    }
  }
  return (batchId, levelId) => known.get(`${batchId} ${levelId}`) ?? null
}
