import { inStep } from '@/core/plan-edits/parts/in-part.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { EndsBy } from '@/core/trial/step.ts'

/** What can end a step, as one picks it: the clock, a mark, a reading. */
export type PickedEnd =
  | 'clock'
  | 'rise'
  | 'poke'
  | 'windowpane'
  | 'bake-loss'
  | 'colour'
  | 'own'
  | 'dough'
  | 'oven-floor'
  | 'core'

/**
 * Weight that a loaf loses in the oven, %, to start from: pages of bakers say 10 to 13, of tins 10 to 11, of home ovens 12 to 17
 * (seen); small and thin pieces lose more.
 */
const usualBakeLossPercent = 12

/** The end of a step to start from, with a usual rise or temperature (common practice, from memory), to be changed. */
export function startedEnd(picked: PickedEnd): EndsBy {
  switch (picked) {
    case 'clock':
      return { by: 'clock' }
    case 'rise':
      return { by: 'mark', mark: 'rise', risePercent: 75 }
    case 'bake-loss':
      return { by: 'mark', mark: 'bake-loss', lossPercent: usualBakeLossPercent }
    case 'poke':
    case 'colour':
    case 'windowpane':
    case 'own':
      return { by: 'mark', mark: picked }
    case 'dough':
      return { by: 'reading', of: picked, celsius: 24 }
    case 'oven-floor':
      return { by: 'reading', of: picked, celsius: 250 }
    case 'core':
      return { by: 'reading', of: picked, celsius: 96 }
  }
}

/** The plan with these steps ended another way. */
export function withEnds(plan: Plan, stepIds: readonly string[], endsBy: EndsBy): Plan {
  return stepIds.reduce((now, id) => inStep(now, id, (step) => ({ ...step, endsBy })), plan)
}

/** The plan with a step done so many times at every level. */
export function withRepeats(plan: Plan, stepId: string, repeats: number): Plan {
  return inStep(plan, stepId, (step) => ({ ...step, repeats }))
}
