import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import type { About, Event } from '@/core/session/event-record.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Ballot } from '@/core/tasting/ballot-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/** The first mix of the made-up day: 2 May 2026, 06:00 UTC. */
export const begun = Date.UTC(2026, 4, 2, 6)
const zone = 'Europe/Rome'
const minutes = 60_000

const kitchen: KitchenThing[] = [
  {
    id: 'flour-1',
    kind: 'flour',
    name: 'Bread flour',
    lot: 'bag 7',
    moisturePercent: 13.5,
    proteinPercent: 12,
  },
  { id: 'fridge-1', kind: 'fridge', name: 'Fridge', celsius: 4, places: 8, freezerCelsius: -18 },
  {
    id: 'mixer-1',
    kind: 'mixer',
    name: 'Hands',
    leastDoughGrams: 100,
    mostDoughGrams: 4000,
    bowlGrams: 900,
    bowlHeat: 0.5,
  },
  { id: 'oven-1', kind: 'oven', name: 'Deck', places: 2, maxCelsius: 300, note: 'hot at the back' },
  { id: 'scale-1', kind: 'scale', name: 'Bench scale', resolutionGrams: 1, capacityGrams: 5000 },
  { id: 'tap-1', kind: 'tap', name: 'Tap', coldestCelsius: 11, warmestCelsius: 48 },
  { id: 'taster-1', kind: 'taster', initials: 'RV' },
  { id: 'taster-2', kind: 'taster', initials: 'OK' },
  { id: 'thermometer-1', kind: 'thermometer', name: 'Probe', spreadCelsius: 0.5 },
]

const stage = { handsSeconds: 300, waitSeconds: 1800, toleranceSeconds: 120 }

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

const sessionOf = (): Session => ({
  id: 'session-1',
  trialId: 'trial-1',
  planId: 'plan-1',
  number: 1,
  createdAt: begun,
  zone,
  plannedSessions: 2,
  batches: [
    { id: 'batch-1', letter: 'K', levelId: 'level-1' },
    { id: 'batch-2', letter: 'D', levelId: 'level-2' },
  ],
  pieces: [
    {
      id: 'piece-0',
      batchId: 'batch-1',
      levelId: 'level-1',
      flightId: null,
      role: 'warm-up',
    },
    {
      id: 'piece-1',
      batchId: 'batch-1',
      levelId: 'level-1',
      flightId: 'flight-1',
      role: 'counted',
    },
    {
      id: 'piece-2',
      batchId: 'batch-2',
      levelId: 'level-2',
      flightId: 'flight-1',
      role: 'counted',
    },
  ],
  dealt: {
    seed: 20260502,
    drawVersion: 1,
    letters: [
      { levelId: 'level-1', letter: 'K' },
      { levelId: 'level-2', letter: 'D' },
    ],
    doughOrder: ['batch-2', 'batch-1'],
    reversed: false,
    flights: [{ id: 'flight-1', number: 1, pieceIds: ['piece-2', 'piece-1'] }],
    loads: [
      { id: 'load-1', number: 1, pieceIds: ['piece-0'] },
      { id: 'load-2', number: 2, pieceIds: ['piece-2', 'piece-1'] },
    ],
    servings: [
      { id: 'serving-0', code: '318', pieceId: 'piece-0', flightId: null },
      { id: 'serving-1', code: '472', pieceId: 'piece-1', flightId: 'flight-1' },
      { id: 'serving-2', code: '905', pieceId: 'piece-2', flightId: 'flight-1' },
    ],
    tasterOrders: [
      { tasterId: 'taster-1', servingIds: ['serving-2', 'serving-1'] },
      { tasterId: 'taster-2', servingIds: ['serving-2', 'serving-1'] },
    ],
    sets: [
      {
        id: 'set-1',
        tasterId: 'taster-1',
        samples: [
          { code: '156', levelId: 'level-1' },
          { code: '683', levelId: 'level-2' },
        ],
        answerCode: '683',
      },
    ],
  },
})

type Told = Event extends infer Each
  ? Each extends Event
    ? Omit<Each, 'id' | 'trialId' | 'sessionId' | 'device' | 'count' | 'at' | 'zone' | 'about'>
    : never
  : never

const about = (kind: About['kind'], id: string): About => ({ kind, id })
const batch = about('batch', 'batch-1')
const piece = about('piece', 'piece-1')
const session = about('session', 'session-1')

/** One event of every kind, in the order of a day. */
const told: [About, Told][] = [
  [about('trial', 'trial-1'), { kind: 'lock' }],
  [about('step', 'step-mix'), { kind: 'note', text: 'flour felt damp' }],
  [batch, { kind: 'step-started', stepId: 'step-mix', repeat: 1 }],
  [batch, { kind: 'weighed', ingredientId: 'water', prefermentId: 'poolish', grams: 66 }],
  [batch, { kind: 'weighed', ingredientId: 'salt', grams: 6 }],
  [batch, { kind: 'void', corrects: 'event-005' }],
  [batch, { kind: 'weighed', ingredientId: 'water', grams: 155 }],
  [batch, { kind: 'weighed', ingredientId: 'water', grams: 153, corrects: 'event-007' }],
  [batch, { kind: 'step-stopped', stepId: 'step-mix', repeat: 1 }],
  [batch, { kind: 'temperature', of: 'dough', celsius: 24.6 }],
  [batch, { kind: 'worked-in', what: 'dusting-flour', grams: 5 }],
  [batch, { kind: 'rise', percent: 78 }],
  [batch, { kind: 'measured', responseId: 'stickiness', value: 4 }],
  [piece, { kind: 'mass', when: 'in', grams: 249, topped: false }],
  [piece, { kind: 'bake-in' }],
  [piece, { kind: 'bake-out' }],
  [piece, { kind: 'size', what: 'height-out', value: 61 }],
  [piece, { kind: 'photo', photoId: 'photo-1', caption: 'crumb' }],
  [about('piece', 'piece-0'), { kind: 'failure', what: 'torn', note: 'at the peel' }],
  [about('taster', 'taster-1'), { kind: 'present' }],
  [about('taster', 'taster-2'), { kind: 'present' }],
  [about('serving', 'serving-2'), { kind: 'served' }],
  [about('serving', 'serving-1'), { kind: 'served' }],
  [about('serving', 'serving-1'), { kind: 'peeked', reason: 'allergy asked' }],
  [about('taster', 'taster-2'), { kind: 'declined' }],
  [about('taster', 'taster-2'), { kind: 'left' }],
  [session, { kind: 'tasting-closed', reason: 'OK had to go' }],
  [session, { kind: 'unsealed' }],
  [session, { kind: 'findings-looked' }],
]

const eventsOf = (): Event[] =>
  told.map(
    ([what, each], index): Event => ({
      ...each,
      id: `event-${String(index + 1).padStart(3, '0')}`,
      trialId: 'trial-1',
      sessionId: 'session-1',
      device: 'device-1',
      count: index + 1,
      at: begun + index * 5 * minutes,
      zone,
      about: what,
    }),
  )

const ballotOf = (number: number, servingId: string, liking: number | null): Ballot => ({
  id: `ballot-${number}`,
  trialId: 'trial-1',
  sessionId: 'session-1',
  tasterId: 'taster-1',
  device: 'device-1',
  count: 100 + number,
  at: begun + (111 + number) * minutes,
  startedAt: begun + (110 + number) * minutes,
  about: { kind: 'serving', id: servingId },
  answers: [
    {
      responseId: 'liking',
      value: liking,
      ...(liking === null ? { why: 'the piece ran out' } : {}),
    },
    { responseId: 'chew', value: 3 },
  ],
})

/**
 * A whole trial with every kind of record and of event in it, valid in shape and reference, made anew at each call. Its
 * one session of two planned is unsealed. Ids are readable; the lists stand in canonical order, rising by id.
 */
export function wholeTrialOf(): WholeTrial {
  const ballots = [
    ballotOf(1, 'serving-2', 7),
    ballotOf(2, 'serving-1', 6),
    { ...ballotOf(3, 'serving-1', null), replaces: 'ballot-2' },
    {
      ...ballotOf(4, 'serving-1', 5),
      about: { kind: 'set' as const, id: 'set-1' },
      answers: [],
      pickedCode: '683',
    },
  ]
  return structuredClone({
    trial: {
      id: 'trial-1',
      createdAt: begun - 600 * minutes,
      zone,
      planId: 'plan-1',
      seed: 4_000_000_000,
      revision: 40,
      note: 'all data invented',
      follows: { trialId: 'trial-0', how: 'narrows' },
    },
    plans: [planOf()],
    sessions: [sessionOf()],
    events: eventsOf(),
    ballots,
    photos: [
      {
        id: 'photo-1',
        trialId: 'trial-1',
        at: begun + 85 * minutes,
        mediaType: 'image/jpeg',
        widthPixels: 640,
        heightPixels: 480,
      },
    ],
    kitchen: [...kitchen].sort((a, b) => (a.id < b.id ? -1 : 1)),
  })
}
