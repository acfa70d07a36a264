import fc from 'fast-check'
import type { IngredientKind } from '@/core/formula/formula-record.ts'
import type { KitchenThing, Scale } from '@/core/kitchen/kitchen-record.ts'
import { withThingChosen } from '@/core/plan-edits/day/choose-thing.ts'
import { withSharedDose } from '@/core/plan-edits/doses/shared-doses.ts'
import { withFactorKind } from '@/core/plan-edits/factor/factor-for-kind.ts'
import { factorKinds } from '@/core/plan-edits/factor/factor-kinds.ts'
import { withBatchSize, withBatchSizedBy } from '@/core/plan-edits/formula/batch-size.ts'
import { flourScaled } from '@/core/plan-edits/formula/flour-scaled.ts'
import { asKind } from '@/core/plan-edits/formula/one-ingredient.ts'
import { withFormula } from '@/core/plan-edits/formula/replace-formula.ts'
import { usualIngredient, usualPreferment } from '@/core/plan-edits/formula/usual-ingredient.ts'
import { withChanges } from '@/core/plan-edits/levels/changes.ts'
import { withControl } from '@/core/plan-edits/levels/control.ts'
import { withSeries } from '@/core/plan-edits/levels/level-series.ts'
import { atValue, withAnotherLevel } from '@/core/plan-edits/levels/measured-level.ts'
import { withLevelWaters, withOwnWater, withSameWater } from '@/core/plan-edits/levels/own-water.ts'
import { shareWaters } from '@/core/plan-edits/levels/share-waters.ts'
import { startedChange } from '@/core/plan-edits/levels/started-change.ts'
import { startedEnd, withEnds } from '@/core/plan-edits/method/ends-by.ts'
import { withMatchedWater, withTemperaturePlanned } from '@/core/plan-edits/method/temperatures.ts'
import { withStepOfKind } from '@/core/plan-edits/method/with-step.ts'
import {
  inFactor,
  inFormula,
  inIngredient,
  inLevel,
  withSessions,
} from '@/core/plan-edits/parts/in-part.ts'
import { withTaster } from '@/core/plan-edits/people/tasters.ts'
import { withTellApart } from '@/core/plan-edits/people/tell-apart.ts'
import { withDoughs } from '@/core/plan-edits/pieces/with-doughs.ts'
import { withPieces } from '@/core/plan-edits/pieces/with-pieces.ts'
import { withPreset } from '@/core/plan-edits/responses/main-response.ts'
import { recordedBy } from '@/core/plan-edits/responses/recorded-by.ts'
import { responsePresets } from '@/core/plan-edits/responses/response-presets.ts'
import { withExpectation } from '@/core/plan-edits/start/expectation.ts'
import { emptyPlan, planFromOther } from '@/core/plan-edits/start/start-from.ts'
import { withWrittenFirst } from '@/core/plan-edits/start/with-written-first.ts'
import {
  takeOutIngredient,
  takeOutLevel,
  takeOutPreferment,
  takeOutResponse,
  takeOutStep,
} from '@/core/plan-edits/take-out/take-out.ts'
import { most } from '@/core/record/most.ts'
import { splitPoints } from '@/core/trial/factor.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { stepKinds } from '@/core/trial/step.ts'
import { planOfTest } from './plan-of-test.ts'

export interface Press {
  name: string
  /** `pick` chooses among the things of the plan, `amount` is a number the press may need, `newId` makes ids. */
  press: (plan: Plan, with_: { pick: number; amount: number; newId: () => string }) => Plan
}

const one = <Thing>(things: readonly Thing[], pick: number): Thing | undefined =>
  things.length === 0 ? undefined : things[pick % things.length]
const kinds: IngredientKind[] = ['flour', 'water', 'liquid', 'salt', 'yeast', 'fat', 'other']
const ends = [
  'clock',
  'rise',
  'poke',
  'windowpane',
  'bake-loss',
  'colour',
  'own',
  'dough',
  'oven-floor',
  'core',
] as const
const oven = { kind: 'oven' as const, id: 'oven', name: 'Deck', places: 6 }
const scale: Scale = { kind: 'scale', id: 's', name: 'S', resolutionGrams: 1, capacityGrams: 5e3 }

/** What the presses name of the kitchen. */
export const kitchenOfTest: KitchenThing[] = [
  oven,
  scale,
  ...Array.from({ length: 9 }, (_, at) => ({
    ...{ id: `taster-${at}`, kind: 'taster' as const, initials: `T${at}` },
  })),
]

const press = (name: string, act: Press['press']): Press => ({ name, press: act })
const taking = (
  name: string,
  take: typeof takeOutLevel,
  things: (plan: Plan) => readonly { id: string }[],
) =>
  press(name, (plan, { pick }) => {
    const thing = one(things(plan), pick)
    return (thing ? take(plan, thing.id)?.plan : null) ?? plan
  })

/** Every act of the page on a plan, each on something of the plan that `pick` chooses. */
export const presses: readonly Press[] = [
  press('turn the kind', (plan, { pick, newId }) =>
    withFactorKind(plan, one(factorKinds, pick)?.kind ?? 'own', newId),
  ),
  press('add a level', (plan, { newId }) =>
    plan.levels.length < 12 ? withAnotherLevel(plan, newId()) : plan,
  ),
  press('type a level', (plan, { pick, amount }) => {
    const level = one(plan.levels, pick)
    const typed = plan.factor.acts.on !== 'choice' && level
    return typed ? inLevel(plan, level.id, (each) => atValue(each, amount)) : plan
  }),
  press('fill a series', (plan, { amount, newId }) =>
    plan.factor.acts.on === 'choice'
      ? plan
      : withSeries(plan, [amount, amount + 1.5, amount + 3], newId),
  ),
  press('mark a control', (plan, { pick }) => withControl(plan, one(plan.levels, pick)?.id ?? '')),
  press('own water', (plan) => (plan.factor.acts.on === 'choice' ? withOwnWater(plan) : plan)),
  press('own waters of shares', (plan) =>
    withLevelWaters(plan, shareWaters(plan, [])?.waters ?? []),
  ),
  press('same water', withSameWater),
  press('split elsewhere', (plan, { pick }) =>
    withDoughs(plan, { splitsAt: one(splitPoints, pick) ?? 'mix' }),
  ),
  press('one dough', (plan) => withDoughs(plan, { doughs: 'one' })),
  press('hold', (plan, { pick }) =>
    inFactor(plan, { held: one(['flour', 'dough', 'piece'] as const, pick) ?? 'flour' }),
  ),
  press('size by', (plan, { pick }) => withBatchSizedBy(plan, pick % 2 ? 'flour' : 'pieces')),
  press('size', (plan, { amount, pick }) =>
    withBatchSize(
      plan,
      pick % 2
        ? { by: 'flour', flourGrams: amount }
        : {
            by: 'pieces',
            pieces: 1 + (pick % most.piecesOfBatch),
            pieceGrams: amount,
            lossPercent: 2,
          },
    ),
  ),
  press('flights', (plan, { pick }) => withPieces(plan, { flights: 1 + (pick % most.flights) })),
  press('spares', (plan, { pick }) => withPieces(plan, { sparePieces: pick % 25 })),
  press('warm-up', (plan, { pick }) => withPieces(plan, { warmUpPiece: pick % 2 === 0 })),
  press('sessions', (plan, { pick }) => withSessions(plan, 1 + (pick % 60))),
  press('add an ingredient', (plan, { pick, newId }) =>
    inFormula(plan, (formula) => ({
      ...formula,
      ingredients: [...formula.ingredients, usualIngredient(one(kinds, pick) ?? 'salt', newId())],
    })),
  ),
  press('add a preferment', (plan, { newId }) =>
    inFormula(plan, (formula) => ({
      ...formula,
      preferments: [...formula.preferments, usualPreferment(formula.ingredients, newId())],
    })),
  ),
  press('another kind of ingredient', (plan, { pick }) =>
    inIngredient(plan, one(plan.formula.ingredients, pick)?.id ?? '', (each) =>
      asKind(each, one(kinds, pick) ?? 'salt'),
    ),
  ),
  press('scale the flours', (plan) => inFormula(plan, flourScaled)),
  press('another formula', (plan, { newId }) => withFormula(plan, planOfTest().formula, newId)),
  press('its own formula from an earlier trial', (plan, { newId }) =>
    withFormula(plan, plan.formula, newId),
  ),
  press('share a dose', (plan, { pick }) => {
    const ingredient = one(plan.formula.ingredients, pick)
    return ingredient ? withSharedDose(plan, ingredient.id, 'stock') : plan
  }),
  press('add a step', (plan, { pick, newId }) =>
    withStepOfKind(plan, one(stepKinds, pick) ?? 'mix', newId()),
  ),
  press('end a step', (plan, { pick }) =>
    withEnds(plan, [one(plan.steps, pick)?.id ?? ''], startedEnd(one(ends, pick) ?? 'clock')),
  ),
  press('plan temperatures', (plan, { pick }) => withTemperaturePlanned(plan, pick % 2 === 0)),
  press('match the water', (plan, { pick }) => withMatchedWater(plan, pick % 2 === 0)),
  press('add a response', (plan, { pick, newId }) => {
    const preset = one(responsePresets, pick)
    return preset ? withPreset(plan, preset, newId(), pick % 3 === 0) : plan
  }),
  press('record by another', (plan, { pick }) => ({
    ...plan,
    responses: plan.responses.map((each) => recordedBy(each, pick % 2 ? 'baker' : 'taster')),
  })),
  press('expect', (plan) => withExpectation(plan, { direction: 'no-difference' })),
  press('ask to tell apart', (plan) => withTellApart(plan, 'triangle')),
  press('hope for a level', (plan, { pick }) => {
    const level = one(plan.levels, pick)
    return level ? withWrittenFirst(plan, { hopedLevelId: level.id }) : plan
  }),
  press('let an option differ', (plan, { pick }) => {
    const level = one(plan.levels, pick)
    const what = one(['ingredient', 'hydration', 'tool', 'step', 'note'] as const, pick) ?? 'note'
    const started = level && startedChange(plan, level, what)
    if (!started || plan.factor.acts.on !== 'choice') return plan
    return inLevel(plan, level.id, (each) => withChanges(each, [...(each.changes ?? []), started]))
  }),
  press('a taster', (plan, { pick }) => withTaster(plan, `taster-${pick % 9}`, 'blind')),
  press('a thing of the kitchen', (plan, { pick }) =>
    withThingChosen(plan, [oven, scale], pick % 2 ? 'oven' : 's'),
  ),
  press('another plan', (plan) => planFromOther(plan, planOfTest(), [])),
  press('an empty page', emptyPlan),
  taking('take out a level', takeOutLevel, ({ levels }) => levels),
  taking('take out a step', takeOutStep, ({ steps }) => steps),
  taking('take out a response', takeOutResponse, ({ responses }) => responses),
  taking('take out an ingredient', takeOutIngredient, ({ formula }) => formula.ingredients),
  taking('take out a preferment', takeOutPreferment, ({ formula }) => formula.preferments),
]

/** A few presses in a row, each with what it needs. */
export const somePresses = fc.array(
  fc.record({
    press: fc.constantFrom(...presses),
    pick: fc.nat(5000),
    amount: fc.oneof(
      fc.double({ min: 0.1, max: 900, noNaN: true }),
      fc.constantFrom(0.01, 100_000, 999_990),
    ),
  }),
  { minLength: 1, maxLength: 12 },
)
