import type { IngredientKind } from '@/core/formula/formula-record.ts'
import type { FactorKind, SplitsAt } from '@/core/trial/factor.ts'
import type { StepKind } from '@/core/trial/step.ts'

/** What a kind of factor needs to be told: the ingredient, preferment or step it moves. */
export type FactorTarget =
  | { names: 'ingredient'; kinds: IngredientKind[] }
  | { names: 'preferment' }
  | { names: 'two-flours' }
  | { names: 'step'; kinds: StepKind[] }
  | { names: 'nothing' }

export interface FactorKindFacts {
  kind: FactorKind
  label: string
  /** The name a new factor of this kind gets; the baker may change it. */
  name: string
  unitOfMeasure: string
  splitsAt: SplitsAt
  target: FactorTarget
  /** True where it moves the formula, so that the plan asks what is held. */
  movesFormula: boolean
}

const ofFlour = '% of flour'
const times: StepKind[] = ['rest', 'autolyse', 'fold', 'mix', 'ball', 'cool']

/** Every kind of factor with its usual name, unit and the place where it begins to act. */
export const factorKinds: readonly FactorKindFacts[] = [
  formulaKind('hydration', 'Hydration', 'hydration', { names: 'ingredient', kinds: ['water'] }),
  formulaKind('salt', 'Salt', 'salt', { names: 'ingredient', kinds: ['salt'] }),
  formulaKind('yeast', 'Yeast', 'yeast', { names: 'ingredient', kinds: ['yeast'] }),
  formulaKind('preferment-share', 'Preferment share', 'preferment', { names: 'preferment' }),
  formulaKind('flour-share', "A flour's share", 'flour share', { names: 'two-flours' }),
  formulaKind('ingredient', "Another ingredient's percentage", 'ingredient', {
    names: 'ingredient',
    kinds: ['fat', 'liquid', 'other'],
  }),
  methodKind('rest-time', 'Rest time', 'rest', 'min', 'mix', times),
  methodKind('proof-time', 'Proof time', 'proof', 'min', 'proof', ['proof']),
  methodKind('cold-hours', 'Cold hours', 'cold proof', 'h', 'proof', ['cold-proof']),
  methodKind('fold-count', 'Fold count', 'folds', 'folds', 'mix', ['fold']),
  methodKind('bake-temperature', 'Bake temperature', 'bake temperature', '°C', 'oven', ['bake']),
  methodKind('bake-time', 'Bake time', 'bake time', 'min', 'oven', ['bake']),
  {
    kind: 'piece-mass',
    label: 'Piece mass',
    name: 'piece mass',
    unitOfMeasure: 'g',
    splitsAt: 'divide',
    target: { names: 'nothing' },
    movesFormula: false,
  },
  {
    kind: 'choice',
    label: 'A choice without order',
    name: 'choice',
    unitOfMeasure: '',
    splitsAt: 'mix',
    target: { names: 'nothing' },
    movesFormula: false,
  },
  {
    kind: 'own',
    label: 'Something else, in a unit of my own',
    name: 'factor',
    unitOfMeasure: '',
    splitsAt: 'mix',
    target: { names: 'nothing' },
    movesFormula: false,
  },
]

/** What the plan page knows of a kind of factor; every kind stands in the list. */
export function factsOfKind(kind: FactorKind): FactorKindFacts {
  const facts = factorKinds.find((candidate) => candidate.kind === kind)
  if (!facts) throw new Error(`no facts of factor kind ${kind}`)
  return facts
}

function formulaKind(
  kind: FactorKind,
  label: string,
  name: string,
  target: FactorTarget,
): FactorKindFacts {
  return {
    kind,
    label,
    name,
    unitOfMeasure: ofFlour,
    splitsAt: 'mix',
    target,
    movesFormula: true,
  }
}

function methodKind(
  kind: FactorKind,
  label: string,
  name: string,
  unitOfMeasure: string,
  splitsAt: SplitsAt,
  kinds: StepKind[],
): FactorKindFacts {
  return {
    kind,
    label,
    name,
    unitOfMeasure,
    splitsAt,
    target: { names: 'step', kinds },
    movesFormula: false,
  }
}
