import type { Event } from '@/core/session/event-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { begun, minutes, zone } from '../../trial-of/made-up-day.ts'
import { wholeTrialOf } from '../../whole-trial-of.ts'

export interface Mixed {
  hydration: number
  doughCelsius?: number
  waterCelsius?: number
  flourCelsius?: number
  waterGrams?: number
  /** When the dough was read, minutes after the mix began. */
  readAfter?: number
}

/** A trial of flour (1000 g) and water alone, by hand, in a kitchen at 20 °C; each dough mixed for ten minutes. */
export function mixingDay(trialId: string, doughs: readonly Mixed[], change: Partial<Plan> = {}) {
  const whole = wholeTrialOf()
  const [session] = whole.sessions
  const [plan] = whole.plans
  if (!session || !plan) throw new Error('the made-up trial has a plan and a session')
  const levels = doughs.map(({ hydration }) => ({
    ...{ id: `h${hydration}`, value: hydration, label: String(hydration), control: false },
  }))
  const batches = doughs.map(({ hydration }, index) => ({
    ...{ id: `${trialId}-b${index}`, letter: 'ABCDEF'[index] as string, levelId: `h${hydration}` },
  }))
  const steps = plan.steps.map((step) => ({ ...step, uses: ['hands' as const] }))
  const mixed: Plan = {
    ...{ ...plan, trialId, levels, steps, kitchenIds: [], sharedDoses: [], tellApart: null },
    formula: {
      ingredients: [
        { id: 'flour', name: 'Flour', kind: 'flour', percent: 100 },
        { id: 'water', name: 'Water', kind: 'water', percent: 65 },
      ],
      preferments: [],
      batchSize: { by: 'flour', flourGrams: 1000 },
    },
    temperature: { wantedDoughCelsius: 25, flourCelsius: 20, roomCelsius: 20, matched: true },
    ...change,
  }
  return {
    ...whole,
    trial: { ...whole.trial, id: trialId },
    plans: [mixed],
    sessions: [
      {
        ...{ ...session, trialId, batches, pieces: [] },
        dealt: {
          ...session.dealt,
          letters: batches.map(({ levelId, letter }) => ({ levelId, letter })),
          doughOrder: batches.map(({ id }) => id),
          ...{ flights: [], loads: [], servings: [], tasterOrders: [], sets: [] },
        },
      },
    ],
    events: doughs.flatMap((dough, index) => eventsOf(trialId, `${trialId}-b${index}`, dough)),
    ballots: [],
    photos: [],
  } satisfies WholeTrial
}

function eventsOf(trialId: string, batchId: string, dough: Mixed): Event[] {
  const about = { kind: 'batch' as const, id: batchId }
  let count = 0
  const stamped = (after: number) => {
    count += 1
    return {
      ...{ id: `${batchId}-${count}`, trialId, sessionId: 'session-1', device: batchId, zone },
      ...{ count, at: begun + after * minutes, about },
    }
  }
  const read = (of: 'dough' | 'water' | 'flour', celsius: number | undefined, after: number) =>
    celsius === undefined ? [] : [{ ...stamped(after), kind: 'temperature' as const, of, celsius }]
  return [
    ...(dough.waterGrams === undefined
      ? []
      : [
          {
            ...{ ...stamped(-5), kind: 'weighed' as const, ingredientId: 'water' },
            grams: dough.waterGrams,
          },
        ]),
    ...read('water', dough.waterCelsius, -2),
    ...read('flour', dough.flourCelsius, -1),
    { ...stamped(0), kind: 'step-started', stepId: 'step-mix', repeat: 1 },
    { ...stamped(10), kind: 'step-stopped', stepId: 'step-mix', repeat: 1 },
    ...read('dough', dough.doughCelsius, dough.readAfter ?? 12),
  ]
}
