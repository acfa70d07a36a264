import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { tastersOf, thingsOf } from './club-kitchen.ts'
import { levelsOf } from './levels-of.ts'
import { sampleResponses } from './responses.ts'
import { stepOf } from './steps.ts'

/** Four salt levels of one pan loaf in a single session: honest, and not settled. Invented. */
export function panLoafPlan(
  newId: () => string,
  trialId: string,
  kitchen: readonly KitchenThing[],
  at: number,
): Plan {
  const [flour, whole, water, salt, yeast] = Array.from({ length: 5 }, newId)
  if (!(flour && whole && water && salt && yeast)) throw new Error('five ids are asked for')
  const responses = [
    { id: newId(), ...sampleResponses.liking },
    { id: newId(), ...sampleResponses.saltiness },
    { id: newId(), ...sampleResponses.bakeLoss },
  ]
  const step = (wanted: Parameters<typeof stepOf>[1]) => stepOf(newId, wanted)
  return {
    id: newId(),
    trialId,
    revision: 1,
    at,
    zone: 'Europe/Vienna',
    question: 'How little salt does our pan loaf need?',
    expectation: { direction: 'best-inside', bestGuess: 2 },
    factor: {
      name: 'salt',
      unitOfMeasure: '% of flour',
      acts: { on: 'salt', ingredientId: salt },
      splitsAt: 'mix',
      held: 'flour',
    },
    levels: levelsOf(newId, [1.4, 1.8, 2.2, 2.6], 1.8),
    formula: {
      ingredients: [
        { id: flour, name: 'Bread flour', kind: 'flour', percent: 70 },
        { id: whole, name: 'Whole spelt flour', kind: 'flour', percent: 30 },
        { id: water, name: 'Water', kind: 'water', percent: 67 },
        { id: salt, name: 'Salt', kind: 'salt', percent: 1.8 },
        { id: yeast, name: 'Instant yeast', kind: 'yeast', percent: 0.7, yeastForm: 'instant' },
      ],
      preferments: [],
      batchSize: { by: 'pieces', pieces: 1, pieceGrams: 820, lossPercent: 1.5 },
    },
    steps: [
      step({ kind: 'mix', name: 'Mix', handsMinutes: 8, waitMinutes: 30, toleranceMinutes: 3 }),
      step({
        kind: 'fold',
        name: 'Fold',
        repeats: 2,
        handsMinutes: 2,
        waitMinutes: 30,
        toleranceMinutes: 3,
      }),
      step({
        kind: 'ball',
        name: 'Shape into the pan',
        per: 'piece',
        handsMinutes: 4,
        waitMinutes: 0,
        toleranceMinutes: 3,
      }),
      step({
        kind: 'proof',
        name: 'Proof in the pan',
        per: 'piece',
        handsMinutes: 0,
        waitMinutes: 70,
        toleranceMinutes: 10,
        uses: [],
        endsBy: { by: 'mark', mark: 'poke' },
      }),
      step({
        kind: 'bake',
        name: 'Bake',
        per: 'piece',
        handsMinutes: 1,
        waitMinutes: 38,
        toleranceMinutes: 1,
        uses: ['oven'],
        celsius: 215,
      }),
      step({
        kind: 'cool',
        name: 'Cool',
        per: 'piece',
        handsMinutes: 0,
        waitMinutes: 150,
        toleranceMinutes: 30,
        uses: [],
      }),
      step({
        kind: 'cut',
        name: 'Cut',
        per: 'piece',
        handsMinutes: 3,
        waitMinutes: 0,
        toleranceMinutes: 30,
      }),
    ],
    responses,
    mainResponseId: responses[0]?.id ?? null,
    serving: 'rested',
    flights: 1,
    sparePieces: 0,
    warmUpPiece: false,
    placesPerLoad: 4,
    plannedSessions: 1,
    tasters: tastersOf(kitchen),
    tastersTalk: false,
    keyKeptBy: 'baker',
    pairsOfHands: 1,
    servingRule: 'A 12 mm slice from the middle third, crust on, no butter.',
    doughs: 'apart',
    temperature: { wantedDoughCelsius: 26, flourCelsius: 20, roomCelsius: 21, matched: true },
    sharedDoses: [],
    tellApart: null,
    kitchenIds: thingsOf(kitchen),
    accepted: [],
  }
}
