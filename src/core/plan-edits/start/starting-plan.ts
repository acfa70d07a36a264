import type { Plan } from '@/core/trial/plan-record.ts'
import type { Response } from '@/core/trial/response.ts'
import type { Step } from '@/core/trial/step.ts'

interface Start {
  newId: () => string
  at: number
  zone: string
}

const minutes = 60

/**
 * The plan a new trial opens with: a plain country loaf whose water is moved in three gentle steps around the usual one,
 * doughs mixed apart with flour held, loaves rested before the tasting, two sessions. Everything in it is there to be
 * changed; it is whole and workable as it stands. Amounts, times and temperatures are common practice, from memory.
 */
export function startingPlan({ newId, at, zone }: Start): Plan {
  const flour = newId()
  const water = newId()
  const responses = startingResponses(newId)
  return {
    id: newId(),
    trialId: newId(),
    revision: 1,
    at,
    zone,
    question: 'How wet should our country loaf be?',
    expectation: null,
    factor: {
      name: 'hydration',
      unitOfMeasure: '% of flour',
      acts: { on: 'hydration', ingredientId: water },
      splitsAt: 'mix',
      held: 'flour',
    },
    levels: [66, 70, 74].map((value) => ({
      id: newId(),
      value,
      label: String(value),
      control: value === 70,
    })),
    formula: {
      ingredients: [
        { id: flour, name: 'Bread flour', kind: 'flour', percent: 100 },
        { id: water, name: 'Water', kind: 'water', percent: 70 },
        { id: newId(), name: 'Salt', kind: 'salt', percent: 2 },
        {
          id: newId(),
          name: 'Instant yeast',
          kind: 'yeast',
          percent: 0.8,
          yeastForm: 'instant',
        },
      ],
      preferments: [],
      batchSize: { by: 'flour', flourGrams: 500 },
    },
    steps: startingSteps(newId),
    responses,
    mainResponseId: responses[0]?.id ?? null,
    serving: 'rested',
    flights: 1,
    sparePieces: 0,
    warmUpPiece: false,
    placesPerLoad: 1,
    plannedSessions: 2,
    tasters: [],
    tastersTalk: false,
    keyKeptBy: 'baker',
    pairsOfHands: 1,
    servingRule: '',
    doughs: 'apart',
    temperature: { wantedDoughCelsius: 25, flourCelsius: 20, roomCelsius: 21, matched: true },
    sharedDoses: [],
    tellApart: null,
    kitchenIds: [],
    accepted: [],
  }
}

function startingSteps(newId: () => string): Step[] {
  const clock = { by: 'clock' } as const
  const once = { per: 'batch', repeats: 1, endsBy: clock } as const
  const each = { ...once, per: 'piece' } as const
  return [
    {
      ...{ ...once, id: newId(), kind: 'mix', name: 'Mix', uses: ['hands'] },
      ...{ handsSeconds: 10 * minutes, waitSeconds: 30 * minutes, ...within(5 * minutes) },
    },
    {
      ...{ ...once, id: newId(), kind: 'fold', name: 'Fold', repeats: 2, uses: ['hands'] },
      ...{ handsSeconds: minutes, waitSeconds: 30 * minutes, ...within(5 * minutes) },
    },
    {
      ...{ ...each, id: newId(), kind: 'ball', name: 'Shape', uses: ['hands'] },
      ...{ handsSeconds: 3 * minutes, waitSeconds: 0, ...within(5 * minutes) },
    },
    {
      ...{ ...each, id: newId(), kind: 'proof', name: 'Proof', uses: [] },
      ...{ handsSeconds: 0, waitSeconds: 60 * minutes, ...within(10 * minutes) },
    },
    {
      ...{ ...each, id: newId(), kind: 'bake', name: 'Bake', uses: ['oven'], celsius: 220 },
      ...{ handsSeconds: minutes, waitSeconds: 35 * minutes, ...within(2 * minutes) },
    },
    {
      ...{ ...each, id: newId(), kind: 'cool', name: 'Cool', uses: [] },
      ...{ handsSeconds: 0, waitSeconds: 120 * minutes, ...within(60 * minutes) },
    },
    {
      ...{ ...each, id: newId(), kind: 'cut', name: 'Cut', uses: ['hands'] },
      ...{ handsSeconds: 2 * minutes, waitSeconds: 0, ...within(30 * minutes) },
    },
  ]
}

/** A tolerance that is the same early and late. */
const within = (seconds: number) => ({ earlySeconds: seconds, lateSeconds: seconds })

function startingResponses(newId: () => string): Response[] {
  return [
    {
      ...{ id: newId(), name: 'Liking', by: 'taster', about: 'serving', margin: 1 },
      scale: {
        kind: 'nine-point',
        anchors: [
          { at: 1, text: 'dislike extremely' },
          { at: 5, text: 'neither like nor dislike' },
          { at: 9, text: 'like extremely' },
        ],
      },
      better: { is: 'higher' },
    },
    {
      ...{ id: newId(), name: 'Softness of crumb', by: 'taster', about: 'serving', margin: null },
      scale: {
        kind: 'nine-point',
        anchors: [
          { at: 1, text: 'firm and dry' },
          { at: 9, text: 'soft and moist' },
        ],
      },
      better: { is: 'neither' },
    },
    {
      ...{ id: newId(), name: 'Stickiness', by: 'baker', about: 'batch', margin: null },
      scale: {
        kind: 'nine-point',
        anchors: [
          { at: 1, text: 'leaves hands and bench clean' },
          { at: 9, text: 'cannot be handled' },
        ],
      },
      better: { is: 'lower' },
    },
  ]
}
