import { waysDiffer } from '@/core/clock-plan/way-to-oven.ts'
import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import { type PlannedTimes, plannedTimes } from '@/core/fairness/planned-times.ts'
import type { Remedy } from '@/core/fairness/remedy.ts'
import type { Session } from '@/core/session/session-record.ts'
import { mixedApart } from '@/core/trial/doughs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { apartPercent, endsOf, meanOf, meansByLevel } from './ends-of.ts'
import { madeItem } from './made-item.ts'

/**
 * Planned ages, as means of each level over all sessions: how long pieces wait for the oven beyond their method, in percent of
 * the way from mix to oven; and how old they are when they are eaten, in minutes for hot pieces and in percent for rested ones.
 * Pieces of one dough that are baked as they get ready are never reversed: mixing apart is what helps them.
 */
export function ageItems(plan: Plan, sessions: readonly Session[]): FairnessItem[] {
  const times = sessions.flatMap((session) => plannedTimes(plan, session))
  if (times.length === 0) return []
  const ready = minutesByLevel(times, ({ waitedSeconds }) => waitedSeconds)
  const eaten = minutesByLevel(times, ({ ageSeconds }) => ageSeconds)
  const methodMinutes = meanOf(times.map(({ methodSeconds }) => methodSeconds)) / 60
  const asReady = !mixedApart(plan) && waysDiffer(plan)
  const remedies: Remedy[] = asReady
    ? [{ code: 'mix-apart' }]
    : [
        ...(plan.plannedSessions > 1 ? [{ code: 'reverses-itself' as const }] : []),
        { code: 'add-session' },
      ]
  const items: FairnessItem[] = []
  if (ready && methodMinutes > 0) {
    const { perLevel, ...data } = ready
    const size = ((data.high - data.low) / methodMinutes) * 100
    items.push(
      madeItem('age-at-baking', { size, data, perLevel, remedies, path: '/plannedSessions' }),
    )
  }
  if (!eaten) return items
  const { perLevel, ...data } = eaten
  if (plan.serving === 'as-baked') {
    const size = data.high - data.low
    return [
      ...items,
      madeItem('oven-to-mouth', { size, data, perLevel, remedies, path: '/placesPerLoad' }),
    ]
  }
  const later: Remedy[] = [...remedies, { code: 'taste-later' }, { code: 'taste-timed' }]
  const found = { size: apartPercent(data), data, perLevel, remedies: later, path: '/serving' }
  return [...items, madeItem('age-at-tasting', found)]
}

function minutesByLevel(times: readonly PlannedTimes[], of: (one: PlannedTimes) => number) {
  const perLevel = meansByLevel(times.map((one) => ({ levelId: one.levelId, value: of(one) / 60 })))
  const ends = endsOf(perLevel.map(({ value }) => value))
  return ends ? { ...ends, perLevel } : null
}
