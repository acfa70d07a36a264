import type { Plan } from '@/core/trial/plan-record.ts'
import type { Response } from '@/core/trial/response.ts'

/**
 * What every taster is asked of every serving: liking first, before any attribute can colour it (a halo), then the other
 * responses that tasters answer in the plan's order. Liking before attributes: common practice in sensory work.
 */
export function tasterQuestions(plan: Pick<Plan, 'responses'>): Response[] {
  const asked = plan.responses.filter((response) => response.by === 'taster')
  return [...asked.filter(asksLiking), ...asked.filter((response) => !asksLiking(response))]
}

/** True for a nine-point question whose ends speak of liking. */
export function asksLiking({ scale }: Pick<Response, 'scale'>): boolean {
  return (
    scale.kind === 'nine-point' &&
    scale.anchors.some(({ at, text }) => (at === 1 || at === 9) && /\b(dis)?lik/i.test(text))
  )
}
