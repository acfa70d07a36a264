import { batchGrams } from '@/core/formula/batch-grams.ts'
import { piecesAskedOfBatch } from '@/core/trial/pieces-in-batch.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { withDoughs } from '@/core/trial/with-doughs.ts'
import type { Remedy } from './remedy.ts'

/**
 * The plan with a remedy applied, never changed in place; the plan itself when the remedy is advice or finds nothing to act
 * on. A proof ended by a mark is ended by the poke unless it says more. Pieces that a flight or a warm-up adds are added to
 * the batch where it is sized by pieces.
 */
export function applyRemedy(plan: Plan, remedy: Remedy): Plan {
  switch (remedy.code) {
    case 'match-water':
      return plan.temperature
        ? { ...plan, temperature: { ...plan.temperature, matched: true } }
        : plan
    case 'hold':
      return { ...plan, factor: { ...plan.factor, held: remedy.held } }
    case 'end-by-mark':
      return withSteps(plan, remedy.stepIds, (step) => ({
        ...step,
        endsBy: { by: 'mark', mark: 'poke' },
      }))
    case 'add-flight':
      return withPieces({ ...plan, flights: plan.flights + 1 })
    case 'drop-flight':
      return plan.flights > 1 ? { ...plan, flights: plan.flights - 1 } : plan
    case 'add-session':
    case 'reverse-next':
      return { ...plan, plannedSessions: plan.plannedSessions + 1 }
    case 'share-dose':
      return withDose(plan, remedy)
    case 'equal-folds':
      return withSteps(plan, [remedy.stepId], (step) => ({ ...step, repeats: remedy.repeats }))
    case 'helper-keeps-key':
      return { ...plan, keyKeptBy: 'helper' }
    case 'tasters-silent':
      return { ...plan, tastersTalk: false }
    case 'add-warm-up':
      return withPieces({ ...plan, warmUpPiece: true })
    case 'tasters-score':
      return {
        ...plan,
        responses: plan.responses.map((response) =>
          response.id === remedy.responseId
            ? { ...response, by: 'taster' as const, about: 'serving' as const }
            : response,
        ),
      }
    case 'one-dough':
      return plan.factor.splitsAt === 'mix' ? plan : withPieces(withDoughs(plan, { doughs: 'one' }))
    case 'mix-apart':
      return withDoughs(plan, { doughs: 'apart' })
    case 'one-pair-of-hands':
      return { ...plan, pairsOfHands: 1 }
    default:
      return plan
  }
}

type Step = Plan['steps'][number]

function withSteps(plan: Plan, ids: readonly string[], change: (step: Step) => Step): Plan {
  const steps = plan.steps.map((step) => (ids.includes(step.id) ? change(step) : step))
  return { ...plan, steps }
}

function withDose(plan: Plan, { ingredientId, by }: Extract<Remedy, { code: 'share-dose' }>): Plan {
  const others = plan.sharedDoses.filter((dose) => dose.ingredientId !== ingredientId)
  return { ...plan, sharedDoses: [...others, { ingredientId, by }] }
}

function withPieces(plan: Plan): Plan {
  const { batchSize } = plan.formula
  const asked = piecesAskedOfBatch(plan)
  if (batchSize.by === 'flour' || (batchGrams(plan.formula).pieces ?? asked) >= asked) return plan
  return { ...plan, formula: { ...plan.formula, batchSize: { ...batchSize, pieces: asked } } }
}
