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
  formulaKind('hydration', 'hydration', { names: 'ingredient', kinds: ['water'] }),
  formulaKind('salt', 'salt', { names: 'ingredient', kinds: ['salt'] }),
  formulaKind('yeast', 'yeast', { names: 'ingredient', kinds: ['yeast'] }),
  formulaKind('preferment-share', 'preferment', { names: 'preferment' }),
  formulaKind('flour-share', 'flour share', { names: 'two-flours' }),
  formulaKind('ingredient', 'ingredient', {
    names: 'ingredient',
    kinds: ['fat', 'liquid', 'other'],
  }),
  methodKind('rest-time', 'rest', 'min', 'mix', times),
  methodKind('proof-time', 'proof', 'min', 'proof', ['proof']),
  methodKind('cold-hours', 'cold proof', 'h', 'proof', ['cold-proof']),
  methodKind('fold-count', 'folds', 'folds', 'mix', ['fold']),
  methodKind('bake-temperature', 'bake temperature', '°C', 'oven', ['bake']),
  methodKind('bake-time', 'bake time', 'min', 'oven', ['bake']),
  {
    kind: 'piece-mass',
    name: 'piece mass',
    unitOfMeasure: 'g',
    splitsAt: 'divide',
    target: { names: 'nothing' },
    movesFormula: false,
  },
  {
    kind: 'choice',
    name: 'choice',
    unitOfMeasure: '',
    splitsAt: 'mix',
    target: { names: 'nothing' },
    movesFormula: false,
  },
  {
    kind: 'own',
    name: 'factor',
    unitOfMeasure: '',
    splitsAt: 'mix',
    target: { names: 'nothing' },
    movesFormula: false,
  },
]

/** What a plan needs to know of a kind of factor; every kind stands in the list. */
export function factsOfKind(kind: FactorKind): FactorKindFacts {
  const facts = factorKinds.find((candidate) => candidate.kind === kind)
  if (!facts) throw new Error(`no facts of factor kind ${kind}`)
  return facts
}

function formulaKind(kind: FactorKind, name: string, target: FactorTarget): FactorKindFacts {
  return {
    kind,
    name,
    unitOfMeasure: ofFlour,
    splitsAt: 'mix',
    target,
    movesFormula: true,
  }
}

function methodKind(
  kind: FactorKind,
  name: string,
  unitOfMeasure: string,
  splitsAt: SplitsAt,
  kinds: StepKind[],
): FactorKindFacts {
  return {
    kind,
    name,
    unitOfMeasure,
    splitsAt,
    target: { names: 'step', kinds },
    movesFormula: false,
  }
}
