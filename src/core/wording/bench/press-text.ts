import type { Event } from '@/core/session/event-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { listText } from '@/core/wording/words/list-text.ts'
import { eventText } from './event-text.ts'

const stepKinds: ReadonlySet<Event['kind']> = new Set<Event['kind']>([
  ...(['step-started', 'hands-off', 'step-stopped', 'step-skipped'] as const),
])

/**
 * What one press at the bench logged, each part in quotation marks, for the button that takes it back: every step it ended or
 * began, “Mix done” and “Fold 1 of 2 begun”; without a step the first entry alone. `of` names the dough or piece, once.
 */
export function pressText(
  press: readonly Event[],
  plan: Pick<Plan, 'formula' | 'responses' | 'sharedDoses' | 'steps'>,
  of: string,
  degrees?: (celsius: number) => string,
): string {
  const steps = press.filter(({ kind }) => stepKinds.has(kind))
  const said = steps.length > 0 ? steps : press.slice(0, 1)
  const parts = said.map((event, at) => {
    const text = eventText(event, plan, degrees)
    return at === 0 && of !== '' ? `“${of}: ${text}”` : `“${text}”`
  })
  return listText(parts)
}
