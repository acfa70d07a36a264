import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { tastersOf, thingsOf } from './club-kitchen.ts'
import { levelsOf } from './levels-of.ts'
import { sampleResponses } from './responses.ts'
import { stepOf } from './steps.ts'

/** Four hydrations of a flatbread eaten as it comes from the stone, three flights: half a working day in. Invented. */
export function flatbreadPlan(
  newId: () => string,
  trialId: string,
  kitchen: readonly KitchenThing[],
  at: number,
): Plan {
  const [flour, water, salt, yeast, oil] = Array.from({ length: 5 }, newId)
  if (!(flour && water && salt && yeast && oil)) throw new Error('five ids are asked for')
  const responses = [
    { id: newId(), ...sampleResponses.liking },
    { id: newId(), ...sampleResponses.crispness },
    { id: newId(), ...sampleResponses.stickiness },
    { id: newId(), ...sampleResponses.bakeLoss },
  ]
  const step = (wanted: Parameters<typeof stepOf>[1]) => stepOf(newId, wanted)
  return {
    id: newId(),
    trialId,
    revision: 1,
    at,
    zone: 'Europe/Vienna',
    question: 'Does a wetter flatbread puff and please more?',
    expectation: { direction: 'rises', bestGuess: 67 },
    factor: {
      name: 'hydration',
      unitOfMeasure: '% of flour',
      acts: { on: 'hydration', ingredientId: water },
      splitsAt: 'mix',
      held: 'piece',
    },
    levels: levelsOf(newId, [57, 62, 67, 72], 62),
    formula: {
      ingredients: [
        { id: flour, name: 'Plain wheat flour', kind: 'flour', percent: 100 },
        { id: water, name: 'Water', kind: 'water', percent: 62 },
        { id: salt, name: 'Salt', kind: 'salt', percent: 1.9 },
        { id: yeast, name: 'Instant yeast', kind: 'yeast', percent: 0.25, yeastForm: 'instant' },
        { id: oil, name: 'Sunflower oil', kind: 'fat', percent: 2 },
      ],
      preferments: [],
      batchSize: { by: 'pieces', pieces: 4, pieceGrams: 140, lossPercent: 2 },
    },
    steps: [
      step({ kind: 'mix', name: 'Mix', handsMinutes: 6, waitMinutes: 20, toleranceMinutes: 2 }),
      step({
        kind: 'fold',
        name: 'Fold',
        repeats: 2,
        handsMinutes: 2,
        waitMinutes: 23,
        toleranceMinutes: 2,
      }),
      step({
        kind: 'divide',
        name: 'Divide and ball',
        handsMinutes: 5,
        waitMinutes: 45,
        toleranceMinutes: 5,
      }),
      step({
        kind: 'open',
        name: 'Roll out',
        per: 'piece',
        handsMinutes: 1,
        waitMinutes: 0,
        toleranceMinutes: 1,
      }),
      step({
        kind: 'bake',
        name: 'Bake',
        per: 'piece',
        handsMinutes: 0.5,
        waitMinutes: 3,
        toleranceMinutes: 0.25,
        uses: ['oven', 'hands'],
        celsius: 290,
      }),
    ],
    responses,
    mainResponseId: responses[0]?.id ?? null,
    serving: 'as-baked',
    flights: 3,
    sparePieces: 0,
    warmUpPiece: true,
    placesPerLoad: 1,
    plannedSessions: 2,
    tasters: tastersOf(kitchen),
    tastersTalk: false,
    keyKeptBy: 'helper',
    pairsOfHands: 1,
    servingRule: 'Torn in as many pieces as tasters, nothing on it, two minutes from the stone.',
    doughs: 'apart',
    temperature: { wantedDoughCelsius: 25, flourCelsius: 22, roomCelsius: 23, matched: true },
    sharedDoses: [],
    tellApart: null,
    kitchenIds: thingsOf(kitchen),
    accepted: [],
  }
}
