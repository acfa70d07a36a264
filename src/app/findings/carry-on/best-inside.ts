import type { FindingsDocument } from '@/core/findings/findings-document.ts'
import { isPresent } from '@/core/findings/reason.ts'

/** The stretch to narrow to: where the best may lie, once it is shown to lie in between. */
export function bestInside({ responses }: FindingsDocument): { low: number; high: number } | null {
  const conclusion = responses[0]?.conclusion
  if (!conclusion?.next.includes('narrow') || !isPresent(conclusion.place)) return null
  const { low, high } = conclusion.place
  return { low, high }
}
