import type { Formula } from '@/core/formula/formula-record.ts'
import type { KitchenThing, Scale } from '@/core/kitchen/kitchen-record.ts'
import type { ActsOn, Factor } from '@/core/trial/factor.ts'
import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Step } from '@/core/trial/step.ts'

export const plainFormula: Formula = {
  ingredients: [
    { id: 'flour', name: 'white flour', kind: 'flour', percent: 100 },
    { id: 'water', name: 'water', kind: 'water', percent: 70 },
    { id: 'salt', name: 'salt', kind: 'salt', percent: 2 },
    { id: 'yeast', name: 'instant yeast', kind: 'yeast', percent: 0.4, yeastForm: 'instant' },
  ],
  preferments: [],
  batchSize: { by: 'flour', flourGrams: 1000 },
}

export const scale = (resolutionGrams: number, capacityGrams: number): Scale => ({
  id: `scale-${resolutionGrams}`,
  kind: 'scale',
  name: `scale ${resolutionGrams}`,
  resolutionGrams,
  capacityGrams,
})

export const kitchen: KitchenThing[] = [scale(1, 5000)]

export const hydration: ActsOn = { on: 'hydration', ingredientId: 'water' }

export function levelsOf(values: readonly number[], control?: number): Level[] {
  return values.map((value) => ({
    id: `L${value}`,
    value,
    label: String(value),
    control: value === control,
  }))
}

export function factorOf(acts: ActsOn, held: Factor['held'] = 'flour'): Factor {
  return { name: acts.on, unitOfMeasure: '%', acts, splitsAt: 'mix', held }
}

export const step = (id: string, kind: Step['kind'], waitSeconds: number): Step => ({
  id,
  kind,
  name: kind,
  per: 'batch',
  repeats: 1,
  handsSeconds: 60,
  waitSeconds,
  earlySeconds: 0,
  lateSeconds: 0,
  endsBy: { by: 'clock' },
  uses: ['hands'],
})

/** A plan without a problem of severity `stop`: hydration 62, 68, 74 with the control in the middle. */
export function aPlan(change: Partial<Plan> = {}): Plan {
  return {
    id: 'plan',
    trialId: 'trial',
    revision: 1,
    at: 0,
    zone: 'UTC',
    question: 'How wet?',
    expectation: { direction: 'best-inside', bestGuess: 68 },
    factor: factorOf(hydration),
    levels: levelsOf([62, 68, 74], 68),
    formula: plainFormula,
    steps: [step('mix', 'mix', 600), step('proof', 'proof', 3600), step('bake', 'bake', 1200)],
    responses: [
      {
        id: 'liking',
        name: 'liking',
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
    ],
    mainResponseId: 'liking',
    serving: 'rested',
    flights: 2,
    sparePieces: 0,
    warmUpPiece: false,
    placesPerLoad: 3,
    plannedSessions: 3,
    tasters: [
      { tasterId: 'a', knows: false },
      { tasterId: 'b', knows: false },
    ],
    tastersTalk: false,
    keyKeptBy: 'baker',
    pairsOfHands: 1,
    servingRule: '',
    doughs: 'apart',
    temperature: { wantedDoughCelsius: 24, flourCelsius: 22, roomCelsius: 22, matched: true },
    sharedDoses: [],
    tellApart: null,
    kitchenIds: ['scale-1'],
    accepted: [],
    ...change,
  }
}
