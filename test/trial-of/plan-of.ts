import type { Plan } from '@/core/trial/plan-record.ts'
import { begun, minutes, zone } from './made-up-day.ts'

const stage = { handsSeconds: 300, waitSeconds: 1800, earlySeconds: 120, lateSeconds: 120 }

/** Two levels of hydration, one control, two flights; a poolish; every kind of step end. */
export const planOf = (): Plan => ({
  id: 'plan-1',
  trialId: 'trial-1',
  revision: 1,
  at: begun - 600 * minutes,
  zone,
  question: 'Does more water open the crumb?',
  expectation: { direction: 'rises', bestGuess: 74, why: 'wetter doughs spread' },
  factor: {
    name: 'Hydration',
    unitOfMeasure: '% of flour',
    acts: { on: 'hydration', ingredientId: 'water' },
    splitsAt: 'mix',
    held: 'flour',
  },
  levels: [
    { id: 'level-1', value: 66.4, label: '66.4', control: true },
    { id: 'level-2', value: 73.2, label: '73.2', control: false },
  ],
  formula: {
    ingredients: [
      { id: 'flour', name: 'Bread flour', kind: 'flour', percent: 100, flourLotId: 'flour-1' },
      { id: 'water', name: 'Water', kind: 'water', percent: 66.4 },
      { id: 'salt', name: 'Salt', kind: 'salt', percent: 2 },
      { id: 'yeast', name: 'Yeast', kind: 'yeast', percent: 0.3, yeastForm: 'instant' },
      { id: 'milk', name: 'Milk', kind: 'liquid', percent: 4, waterPercent: 88, celsius: 5 },
    ],
    preferments: [
      {
        id: 'poolish',
        name: 'Poolish',
        kind: 'poolish',
        flourSharePercent: 20,
        parts: [
          { ingredientId: 'flour', percent: 100 },
          { ingredientId: 'water', percent: 100 },
        ],
        celsius: 21,
      },
    ],
    batchSize: { by: 'pieces', pieces: 2, pieceGrams: 250, lossPercent: 2 },
  },
  steps: [
    {
      ...{ id: 'step-mix', kind: 'mix', name: 'Mix', per: 'batch', repeats: 1, ...stage },
      ...{ endsBy: { by: 'mark', mark: 'windowpane' }, uses: ['hands', 'mixer'] },
    },
    {
      ...{ id: 'step-proof', kind: 'proof', name: 'Proof', per: 'batch', repeats: 1, ...stage },
      ...{ endsBy: { by: 'mark', mark: 'rise', risePercent: 80 }, uses: [], celsius: 26 },
    },
    {
      ...{ id: 'step-bake', kind: 'bake', name: 'Bake', per: 'piece', repeats: 1, ...stage },
      ...{ endsBy: { by: 'reading', of: 'core', celsius: 96 }, uses: ['oven'], celsius: 250 },
    },
    {
      ...{ id: 'step-cut', kind: 'cut', name: 'Cut', per: 'piece', repeats: 1, ...stage },
      ...{ endsBy: { by: 'clock' }, uses: ['hands'] },
    },
  ],
  responses: [
    {
      ...{ id: 'liking', name: 'Liking', by: 'taster', about: 'serving', margin: 1 },
      scale: {
        kind: 'nine-point',
        anchors: [
          { at: 1, text: 'dislike it very much' },
          { at: 9, text: 'like it very much' },
        ],
      },
      better: { is: 'higher' },
    },
    {
      ...{ id: 'chew', name: 'Chew', by: 'taster', about: 'serving', margin: null },
      scale: { kind: 'just-about-right', low: 'too soft', high: 'too tough' },
      better: { is: 'target', at: 3 },
    },
    {
      ...{ id: 'stickiness', name: 'Stickiness', by: 'baker', about: 'batch', margin: null },
      scale: { kind: 'measured', unitOfMeasure: 'points', measure: 'own' },
      better: { is: 'lower' },
    },
  ],
  mainResponseId: 'liking',
  serving: 'as-baked',
  flights: 1,
  sparePieces: 0,
  warmUpPiece: true,
  placesPerLoad: 2,
  plannedSessions: 2,
  tasters: [
    { tasterId: 'taster-1', knows: false },
    { tasterId: 'taster-2', knows: true },
  ],
  tastersTalk: false,
  keyKeptBy: 'baker',
  pairsOfHands: 1,
  servingRule: 'a strip from the middle',
  doughs: 'apart',
  temperature: { wantedDoughCelsius: 25, flourCelsius: 20, roomCelsius: 21, matched: true },
  sharedDoses: [
    { ingredientId: 'yeast', by: 'stock', stockGrams: 5, stockWaterGrams: 95, doseGrams: 15 },
  ],
  tellApart: { test: 'paired', levelIds: ['level-1', 'level-2'] },
  kitchenIds: ['flour-1', 'fridge-1', 'mixer-1', 'oven-1', 'scale-1', 'tap-1', 'thermometer-1'],
  accepted: ['bake-order'],
})
