import { batchGrams } from '@/core/formula/batch-grams.ts'
import { piecesAskedOfBatch } from './pieces-in-batch.ts'
import type { PlanProblem } from './plan-problem.ts'
import type { Plan } from './plan-record.ts'

/**
 * Doughs that do not give what is asked of them: fewer pieces than a batch sized by its pieces has to give or, where the piece
 * mass is the factor and a batch is sized by its flour, less dough than the pieces weigh together.
 */
export function pieceProblems(plan: Plan): PlanProblem[] {
  const size = plan.formula.batchSize
  if (size.by === 'flour') return doughProblems(plan, size.flourGrams)
  const asked = piecesAskedOfBatch(plan)
  if (asked <= size.pieces) return []
  const path = '/formula/batchSize/pieces'
  return [{ path, severity: 'stop', reason: 'more-pieces-than-dough', asked, has: size.pieces }]
}

interface Asked {
  /** Null for one dough that serves all levels. */
  label: string | null
  pieces: number
  grams: number
}

function doughProblems(plan: Plan, flourGrams: number): PlanProblem[] {
  const { doughGrams } = batchGrams(plan.formula)
  const most = mostAsked(plan)
  // Half a gram is below what anybody portions to.
  if (!most || !(doughGrams > 0) || !(most.grams > doughGrams + 0.5)) return []
  const leastFlourGrams = Math.ceil((most.grams * flourGrams) / doughGrams)
  const path = '/formula/batchSize/flourGrams'
  const found = { ...most, doughGrams, leastFlourGrams }
  return [{ path, severity: 'stop', reason: 'pieces-outweigh-dough', ...found }]
}

/** The dough that has the most to give; the warm-up piece is the control's, without a control anybody's. */
function mostAsked({ factor, levels, flights, sparePieces, ...plan }: Plan): Asked | null {
  if (factor.acts.on !== 'piece-mass') return null
  const each = flights + sparePieces
  const control = levels.some((level) => level.control)
  const masses = levels.flatMap(({ value, label, control: own }) =>
    value === null || !Number.isFinite(value)
      ? []
      : [{ label, grams: value, warmUp: plan.warmUpPiece && (own || !control) ? 1 : 0 }],
  )
  const asked = masses.map(({ label, grams, warmUp }) => ({
    ...{ label, pieces: each + warmUp, grams: (each + warmUp) * grams },
  }))
  if (asked.length === 0) return null
  if (plan.doughs === 'apart' || factor.splitsAt === 'mix')
    return asked.reduce((most, one) => (one.grams > most.grams ? one : most))
  const warmUps = masses.map(({ grams, warmUp }) => grams * warmUp)
  return {
    label: null,
    pieces: each * masses.length + (plan.warmUpPiece ? 1 : 0),
    grams: masses.reduce((sum, { grams }) => sum + each * grams, 0) + Math.max(...warmUps),
  }
}
