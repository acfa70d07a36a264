import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { tastersOf, thingsOf } from './club-kitchen.ts'
import { levelsOf } from './levels-of.ts'
import { sampleResponses } from './responses.ts'
import { stepOf } from './steps.ts'

/** Five hydrations of one focaccia, doughs mixed apart, pans rested before the tasting, three sessions. Invented. */
export function focacciaPlan(
  newId: () => string,
  trialId: string,
  kitchen: readonly KitchenThing[],
  at: number,
): Plan {
  const [strong, soft, water, salt, yeast, oil] = Array.from({ length: 6 }, newId)
  if (!(strong && soft && water && salt && yeast && oil)) throw new Error('six ids are asked for')
  const responses = [
    { id: newId(), ...sampleResponses.liking },
    { id: newId(), ...sampleResponses.crispness },
    { id: newId(), ...sampleResponses.openness },
    { id: newId(), ...sampleResponses.stickiness },
    { id: newId(), ...sampleResponses.bakeLoss },
  ]
  return {
    id: newId(),
    trialId,
    revision: 1,
    at,
    zone: 'Europe/Vienna',
    question: 'How wet should our focaccia be?',
    expectation: {
      direction: 'best-inside',
      bestGuess: 77,
      why: 'The wetter pans looked livelier last month, but nobody tasted them blind.',
    },
    factor: {
      name: 'hydration',
      unitOfMeasure: '% of flour',
      acts: { on: 'hydration', ingredientId: water },
      splitsAt: 'mix',
      held: 'dough',
    },
    levels: levelsOf(newId, [66, 70, 74, 78, 82], 74),
    formula: {
      ingredients: [
        { id: strong, name: 'Strong wheat flour', kind: 'flour', percent: 85 },
        { id: soft, name: 'Soft wheat flour', kind: 'flour', percent: 15 },
        { id: water, name: 'Water', kind: 'water', percent: 74 },
        { id: salt, name: 'Salt', kind: 'salt', percent: 2.2 },
        { id: yeast, name: 'Instant yeast', kind: 'yeast', percent: 0.35, yeastForm: 'instant' },
        { id: oil, name: 'Olive oil', kind: 'fat', percent: 4 },
      ],
      preferments: [
        {
          id: newId(),
          name: 'Poolish',
          kind: 'poolish',
          flourSharePercent: 20,
          parts: [
            { ingredientId: strong, percent: 100 },
            { ingredientId: water, percent: 100 },
            { ingredientId: yeast, percent: 0.1 },
          ],
        },
      ],
      batchSize: { by: 'flour', flourGrams: 480 },
    },
    steps: focacciaSteps(newId),
    responses,
    mainResponseId: responses[0]?.id ?? null,
    serving: 'rested',
    flights: 1,
    sparePieces: 0,
    warmUpPiece: false,
    placesPerLoad: 2,
    plannedSessions: 3,
    tasters: tastersOf(kitchen),
    tastersTalk: false,
    keyKeptBy: 'helper',
    pairsOfHands: 1,
    servingRule: 'A 4 cm square from the middle of the pan, no topping, at room temperature.',
    doughs: 'apart',
    temperature: { wantedDoughCelsius: 24, flourCelsius: 21, roomCelsius: 22, matched: true },
    sharedDoses: [{ ingredientId: yeast, by: 'dry-mix' }],
    tellApart: null,
    kitchenIds: thingsOf(kitchen),
    accepted: [],
  }
}

function focacciaSteps(newId: () => string): Plan['steps'] {
  const step = (wanted: Parameters<typeof stepOf>[1]) => stepOf(newId, wanted)
  return [
    step({ kind: 'mix', name: 'Mix', handsMinutes: 6, waitMinutes: 20, toleranceMinutes: 3 }),
    step({
      kind: 'fold',
      name: 'Fold',
      repeats: 3,
      handsMinutes: 2,
      waitMinutes: 28,
      toleranceMinutes: 3,
    }),
    step({
      kind: 'proof',
      name: 'Rise in the tub',
      handsMinutes: 0,
      waitMinutes: 60,
      toleranceMinutes: 8,
      uses: [],
      endsBy: { by: 'mark', mark: 'rise', risePercent: 80 },
    }),
    step({
      kind: 'open',
      name: 'Into the pan, dimple',
      per: 'piece',
      handsMinutes: 3,
      waitMinutes: 40,
      toleranceMinutes: 4,
    }),
    step({
      kind: 'bake',
      name: 'Bake',
      per: 'piece',
      handsMinutes: 1,
      waitMinutes: 22,
      toleranceMinutes: 1,
      uses: ['oven'],
      celsius: 235,
    }),
    step({
      kind: 'cool',
      name: 'Cool',
      per: 'piece',
      handsMinutes: 0,
      waitMinutes: 60,
      toleranceMinutes: 20,
      uses: [],
    }),
    step({
      kind: 'cut',
      name: 'Cut',
      per: 'piece',
      handsMinutes: 2,
      waitMinutes: 0,
      toleranceMinutes: 20,
    }),
  ]
}
