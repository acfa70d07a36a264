import type { Plan } from '@/core/trial/plan-record.ts'
import type { Step, StepKind } from '@/core/trial/step.ts'

/** A step for tests: five minutes of hands and a wait, good to two minutes. */
export function madeStep(id: string, kind: StepKind, change: Partial<Step> = {}): Step {
  return {
    id,
    kind,
    name: id,
    per: 'batch',
    repeats: 1,
    handsSeconds: 300,
    waitSeconds: 0,
    earlySeconds: 120,
    lateSeconds: 120,
    endsBy: { by: 'clock' },
    uses: ['hands'],
    ...change,
  }
}

/** Counts up ids, so that two deals with the same counter are the same. */
export function countedIds(prefix = 'id'): () => string {
  let count = 0
  return () => {
    count += 1
    return `${prefix}-${count}`
  }
}

/** A flatbread trial of a bake club: four levels of water, two flights, as baked, three tasters. */
export function madePlan(change: Partial<Plan> = {}): Plan {
  return {
    id: 'plan-a',
    trialId: 'trial-a',
    revision: 1,
    at: 1_000,
    zone: 'Europe/Zurich',
    question: 'How wet may our flatbread be?',
    expectation: { direction: 'best-inside', bestGuess: 66.4 },
    factor: {
      name: 'hydration',
      unitOfMeasure: '% of flour',
      acts: { on: 'hydration', ingredientId: 'water' },
      splitsAt: 'mix',
      held: 'flour',
    },
    levels: [
      { id: 'lv-low', value: 57, label: '57', control: false },
      { id: 'lv-mid', value: 61.5, label: '61.5', control: true },
      { id: 'lv-high', value: 66.4, label: '66.4', control: false },
      { id: 'lv-top', value: 72, label: '72', control: false },
    ],
    formula: {
      ingredients: [
        { id: 'flour', name: 'Bread flour', kind: 'flour', percent: 100 },
        { id: 'water', name: 'Water', kind: 'water', percent: 61.5 },
        { id: 'salt', name: 'Salt', kind: 'salt', percent: 2 },
        { id: 'yeast', name: 'Yeast', kind: 'yeast', percent: 0.5, yeastForm: 'instant' },
      ],
      preferments: [],
      batchSize: { by: 'flour', flourGrams: 400 },
    },
    steps: [
      madeStep('mix', 'mix', { uses: ['hands', 'mixer'], handsSeconds: 480, waitSeconds: 0 }),
      madeStep('rest', 'rest', { handsSeconds: 0, waitSeconds: 1800, uses: [] }),
      madeStep('fold', 'fold', { repeats: 2, handsSeconds: 120, waitSeconds: 1200 }),
      madeStep('ball', 'ball', { per: 'piece', handsSeconds: 60, waitSeconds: 0 }),
      madeStep('bake', 'bake', {
        per: 'piece',
        handsSeconds: 20,
        waitSeconds: 240,
        earlySeconds: 5,
        lateSeconds: 5,
        uses: ['hands', 'oven'],
      }),
    ],
    responses: [
      {
        id: 'liking',
        name: 'Liking',
        by: 'taster',
        about: 'serving',
        scale: {
          kind: 'nine-point',
          anchors: [
            { at: 1, text: 'dislike extremely' },
            { at: 9, text: 'like extremely' },
          ],
        },
        better: { is: 'higher' },
        margin: 1,
      },
      {
        id: 'salty',
        name: 'Saltiness',
        by: 'taster',
        about: 'serving',
        scale: { kind: 'just-about-right', low: 'flat', high: 'salty' },
        better: { is: 'target', at: 3 },
        margin: null,
      },
      {
        id: 'sticky',
        name: 'Stickiness',
        by: 'baker',
        about: 'batch',
        scale: { kind: 'nine-point', anchors: [] },
        better: { is: 'lower' },
        margin: null,
      },
      {
        id: 'loss',
        name: 'Bake loss',
        by: 'baker',
        about: 'piece',
        scale: { kind: 'measured', unitOfMeasure: '%', measure: 'bake-loss' },
        better: { is: 'neither' },
        margin: null,
      },
    ],
    mainResponseId: 'liking',
    serving: 'as-baked',
    flights: 2,
    sparePieces: 0,
    warmUpPiece: true,
    placesPerLoad: 1,
    plannedSessions: 2,
    tasters: [
      { tasterId: 'ta-1', knows: false },
      { tasterId: 'ta-2', knows: false },
      { tasterId: 'ta-3', knows: true },
    ],
    tastersTalk: false,
    keyKeptBy: 'baker',
    pairsOfHands: 1,
    servingRule: 'a strip of one width, plain',
    doughs: 'apart',
    temperature: null,
    sharedDoses: [],
    tellApart: null,
    kitchenIds: [],
    accepted: [],
    ...change,
  }
}
