import type { Standing } from '@/core/session/effective-events.ts'
import { bakerAmong } from '@/core/trial/baker-tastes.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/**
 * The baker's id as long as they score a session without knowing which is which, so that no code may stand beside a letter; null
 * where they do not taste, know by the plan, or looked at the key themselves.
 */
export function blindBaker(
  plan: Pick<Plan, 'tasters' | 'keyKeptBy'>,
  effective: readonly Standing[],
): string | null {
  const baker = bakerAmong(plan)
  if (!baker || baker.knows) return null
  const looked = effective.some(
    ({ kind, about }) =>
      kind === 'peeked' && about.kind === 'taster' && about.id === baker.tasterId,
  )
  return looked ? null : baker.tasterId
}
