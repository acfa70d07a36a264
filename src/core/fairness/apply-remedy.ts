import { withSharedDose } from '@/core/plan-edits/doses/shared-doses.ts'
import { withLevelWaters } from '@/core/plan-edits/levels/own-water.ts'
import { startedEnd, withEnds, withRepeats } from '@/core/plan-edits/method/ends-by.ts'
import { withMatchedWater } from '@/core/plan-edits/method/temperatures.ts'
import { inFactor, inResponse, withSessions } from '@/core/plan-edits/parts/in-part.ts'
import { withDoughs } from '@/core/plan-edits/pieces/with-doughs.ts'
import { withPieces } from '@/core/plan-edits/pieces/with-pieces.ts'
import { recordedBy } from '@/core/plan-edits/responses/recorded-by.ts'
import { most } from '@/core/record/most.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { FairnessItem } from './fairness-item.ts'
import { leftToMend } from './in-turn.ts'
import type { Remedy } from './remedy.ts'
import { isPress } from './remedy.ts'

/**
 * The plan with a remedy applied, by the same acts as a press on the page, never changed in place; the plan itself when the
 * remedy is advice or finds nothing to act on. A proof ended by a mark is ended by the poke unless it says more.
 */
export function applyRemedy(plan: Plan, remedy: Remedy): Plan {
  switch (remedy.code) {
    case 'match-water':
      return withMatchedWater(plan)
    case 'hold':
      return inFactor(plan, { held: remedy.held })
    case 'end-by-mark':
      return withEnds(plan, remedy.stepIds, startedEnd('poke'))
    case 'add-flight':
      return plan.flights < most.flights ? withPieces(plan, { flights: plan.flights + 1 }) : plan
    case 'drop-flight':
      return plan.flights > 1 ? withPieces(plan, { flights: plan.flights - 1 }) : plan
    case 'add-session':
    case 'reverse-next':
      return withSessions(plan, plan.plannedSessions + 1)
    case 'share-dose':
      return withSharedDose(plan, remedy.ingredientId, remedy.by)
    case 'equal-folds':
      return withRepeats(plan, remedy.stepId, remedy.repeats)
    case 'helper-keeps-key':
      return { ...plan, keyKeptBy: 'helper' }
    case 'tasters-silent':
      return { ...plan, tastersTalk: false }
    case 'add-warm-up':
      return withPieces(plan, { warmUpPiece: true })
    case 'tasters-score':
      return inResponse(plan, remedy.responseId, (response) => recordedBy(response, 'taster'))
    case 'one-dough':
      return withDoughs(plan, { doughs: 'one' })
    case 'mix-apart':
      return withDoughs(plan, { doughs: 'apart' })
    case 'end-by-core':
      return withEnds(plan, [remedy.stepId], {
        by: 'reading',
        of: 'core',
        celsius: remedy.celsius,
      })
    case 'end-by-loss':
      return withEnds(plan, [remedy.stepId], startedEnd('bake-loss'))
    case 'end-by-colour':
      return withEnds(plan, [remedy.stepId], startedEnd('colour'))
    case 'end-by-windowpane':
      return withEnds(plan, remedy.stepIds, startedEnd('windowpane'))
    case 'own-waters':
      return withLevelWaters(plan, remedy.waters)
    case 'one-pair-of-hands':
      return { ...plan, pairsOfHands: 1 }
    default:
      return plan
  }
}

/** The plan that mends: the same once more, with the first remedy of every open item that one press can apply. */
export function mendingPlan(plan: Plan, items: readonly FairnessItem[]): Plan {
  return leftToMend(items).reduce((mended, { remedies }) => {
    const remedy = remedies.find(isPress)
    return remedy ? applyRemedy(mended, remedy) : mended
  }, plan)
}
