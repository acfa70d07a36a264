import type { FindingsDocument } from '@/core/findings/findings-document.ts'
import { isPresent } from '@/core/findings/reason.ts'

/** The place the best is narrowed around: the middle of its stretch, or the top of an even hump, where it is shown to lie in between. */
export function bestInside({ responses }: FindingsDocument): number | null {
  const conclusion = responses[0]?.conclusion
  if (!conclusion?.next.includes('narrow') || !isPresent(conclusion.place)) return null
  const { low, high, even } = conclusion.place
  return even?.at ?? (low + high) / 2
}
