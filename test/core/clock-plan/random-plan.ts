import { type Chance, chanceFrom, shuffled, wholeBetween } from '@/core/design/chance.ts'
import type { Factor } from '@/core/trial/factor.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Step, StepKind } from '@/core/trial/step.ts'
import { madePlan, madeStep } from '../made-plan.ts'

/** A plan drawn from a seed: any factor that moves a time or the oven, two to four levels, hot or rested, one dough or several. */
export function randomPlan(seed: number): Plan {
  const chance = chanceFrom(7, seed)
  const whole = (from: number, to: number) => wholeBetween(chance, from, to)
  const oneOf = <Item>(items: readonly Item[]): Item => shuffled(chance, [...items])[0] as Item
  const serving = oneOf(['as-baked', 'rested'] as const)
  const steps = randomSteps(whole, oneOf, serving)
  const factor = randomFactor(chance, steps, oneOf)
  const levels = Array.from({ length: whole(2, 4) }, (_, at) => ({
    ...{ id: `lv-${at}`, value: levelValue(factor, at), label: `${at}`, control: at === 0 },
  }))
  return madePlan({
    ...{ steps, factor, levels, serving },
    doughs: oneOf(['one', 'apart'] as const),
    flights: whole(1, 2),
    sparePieces: whole(0, 1),
    warmUpPiece: whole(0, 1) === 1,
    placesPerLoad: whole(1, 6),
  })
}

type Whole = (from: number, to: number) => number
type OneOf = <Item>(items: readonly Item[]) => Item

function randomSteps(whole: Whole, oneOf: OneOf, serving: Plan['serving']): Step[] {
  const drawn = (kind: StepKind, per: Step['per'], change: Partial<Step> = {}) =>
    madeStep(kind, kind, {
      ...{ per, handsSeconds: whole(0, 9) * 37, waitSeconds: whole(0, 120) * 61 },
      ...change,
    })
  const maybe = (step: Step) => (whole(0, 1) === 1 ? [step] : [])
  const baked = oneOf(['batch', 'piece', 'piece'] as const)
  const bake = drawn('bake', baked, { uses: ['hands', 'oven'], celsius: whole(180, 260) })
  const second = { ...drawn('bake', baked, { uses: ['oven'], celsius: 200 }), id: 'bake-on' }
  return [
    drawn('mix', 'batch', { handsSeconds: whole(60, 900) }),
    ...maybe(drawn('rest', 'batch')),
    ...maybe(drawn('fold', 'batch', { repeats: whole(1, 3) })),
    ...maybe(drawn('divide', 'batch')),
    ...maybe(drawn('ball', 'piece')),
    drawn('proof', oneOf(['batch', 'piece'] as const)),
    ...maybe(drawn('open', baked)),
    bake,
    ...(whole(0, 3) === 0 ? [second] : []),
    ...(serving === 'rested' || whole(0, 1) === 1 ? [drawn('cool', 'piece')] : []),
    ...maybe(drawn('cut', 'piece')),
  ]
}

function randomFactor(chance: Chance, steps: readonly Step[], oneOf: OneOf): Factor {
  const usual = { name: 'factor', held: 'piece' as const }
  const time = { on: 'proof-time' as const, stepId: 'proof' }
  const all: Factor[] = [
    { ...madePlan().factor },
    { ...usual, unitOfMeasure: 'min', acts: time, splitsAt: 'proof' },
    {
      ...usual,
      unitOfMeasure: '°C',
      acts: { on: 'bake-temperature', stepId: 'bake' },
      splitsAt: 'oven',
    },
    { ...usual, unitOfMeasure: 's', acts: { on: 'bake-time', stepId: 'bake' }, splitsAt: 'oven' },
  ]
  const fold = steps.some(({ kind }) => kind === 'fold')
  if (fold && wholeBetween(chance, 0, 1) === 1)
    all.push({
      ...usual,
      unitOfMeasure: 'folds',
      acts: { on: 'fold-count', stepId: 'fold' },
      splitsAt: 'mix',
    })
  return oneOf(all)
}

function levelValue({ acts }: Factor, at: number): number {
  switch (acts.on) {
    case 'proof-time':
      return 31 + 17 * at
    case 'bake-temperature':
      return 190 + 15 * at
    case 'bake-time':
      return 240 + 45 * at
    case 'fold-count':
      return at
    default:
      return 57 + 4.5 * at
  }
}
