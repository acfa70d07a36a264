import type { Plan } from '@/core/trial/plan-record.ts'
import type { DetectableRung } from './detectable.ts'

/** What the verdict will ask of a plan: a rise or fall, a best in between, or a pair where nothing else was written. */
export type AskedOfPlan = 'rise' | 'hump' | 'pair'

export function askedOfPlan({
  expectation,
  levels,
}: Pick<Plan, 'expectation' | 'levels'>): AskedOfPlan {
  if (levels.some(({ value }) => value === null)) return 'pair'
  if (expectation?.direction === 'best-inside') return 'hump'
  return expectation?.direction === 'rises' || expectation?.direction === 'falls' ? 'rise' : 'pair'
}

/** The true difference that shows with power 0.8 in what the verdict will ask of the plan; null where the rung cannot answer. */
export function whatShows(
  rung: DetectableRung,
  plan: Pick<Plan, 'expectation' | 'levels'>,
): number | null {
  if (!rung.ok) return null
  const sizes = { rise: rung.riseShows, hump: rung.humpShows, pair: rung.wouldShow }
  return sizes[askedOfPlan(plan)] ?? rung.wouldShow
}
