import { dealSession } from '@/core/session/deal-session.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { begun, zone } from '../trial-of/made-up-day.ts'
import { planOf } from '../trial-of/plan-of.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'

/** Eight of a bake club, by codes. */
export const tasterNames = ['AN', 'BO', 'CY', 'DI', 'EK', 'FA', 'GU', 'HO'] as const

const labels = [66.4, 69.1, 71.7, 74.3] as const

/** A rested tasting of four levels whose numbers no scale, code or position prints; nobody has tasted yet. */
export function tastingTrial(change: Partial<Plan> = {}): WholeTrial {
  const whole = wholeTrialOf()
  const plan: Plan = {
    ...planOf(),
    question: 'Is 71.7 really better than 66.4?',
    serving: 'rested',
    flights: 1,
    warmUpPiece: false,
    tellApart: null,
    levels: labels.map((value, at) => ({
      id: `level-${at + 1}`,
      value,
      label: String(value),
      control: at === 0,
    })),
    tasters: tasterNames.map((_, at) => ({ tasterId: `club-${at + 1}`, knows: false })),
    ...change,
  }
  let made = 0
  const dealt = dealSession({
    plan,
    trialSeed: 11,
    number: 1,
    earlier: [],
    at: begun,
    zone,
    newId: () => `dealt-${++made}`,
  })
  if (!dealt.ok) throw new Error(dealt.reason)
  return {
    ...whole,
    trial: { ...whole.trial, planId: plan.id },
    plans: [plan],
    sessions: [dealt.session],
    events: [],
    ballots: [],
    photos: [],
    kitchen: [
      ...whole.kitchen,
      ...tasterNames.map((initials, at) => ({
        id: `club-${at + 1}`,
        kind: 'taster' as const,
        initials,
      })),
    ],
  }
}

/** Every text that would tell: levels and weights of the formula, and ids of levels, doughs and pieces. */
export function tellingOf({ plans, kitchen, sessions }: WholeTrial): string[] {
  const [plan] = plans
  const [session] = sessions
  if (!plan || !session) throw new Error('a plan and a session')
  return [
    ...labels.map(String),
    ...plan.levels.map(({ id }) => id),
    ...weighSheet(plan, kitchen).batches.flatMap(({ lines }) =>
      lines.flatMap(({ grams, targetGrams }) => [`${grams.toFixed(1)} g`, targetGrams.toFixed(2)]),
    ),
    ...session.batches.map(({ id }) => `"${id}"`),
    ...session.pieces.map(({ id }) => `"${id}"`),
    ...session.dealt.servings.map(({ id }) => `"${id}"`),
  ]
}
