import type { StepKind } from '@/core/trial/step.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { civilMoment } from '@/core/wording/words/civil-moment.ts'
import { madePlan, madeStep } from '../core/made-plan.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'

const zone = 'Europe/Zurich'

/** A moment of the two days, UTC ms: Friday the 4th, Saturday the 5th of December 2026. */
export const onDay = (day: 4 | 5, hour: number, minute = 0): number =>
  civilMoment({ year: 2026, month: 12, day, hour, minute }, zone)

const minutes = 60

interface Work {
  hands: number
  wait?: number
  early?: number
  late?: number
}

/** A step by its minutes. */
const step = (kind: StepKind, name: string, { hands, wait = 0, early = 0, late = 10 }: Work) =>
  madeStep(kind, kind, {
    ...{ name, handsSeconds: hands * minutes, waitSeconds: wait * minutes },
    ...{ earlySeconds: early * minutes, lateSeconds: late * minutes },
    uses: hands > 0 ? ['hands'] : [],
  })

/** Who tastes, by codes. */
const club = ['AN', 'BO', 'CY'].map((initials, at) => ({
  ...{ id: `club-${at + 1}`, kind: 'taster' as const, initials },
}))

/**
 * A bake club's pan loaf in three doughs of unlike salt: kneaded on Friday evening, a night in the fridge in its pan, baked on
 * Saturday and eaten the day it has cooled. One helper is there for the hour of shaping. All data invented.
 */
export function panLoaf(): WholeTrial {
  const plan = madePlan()
  const { trial } = wholeTrialOf()
  return {
    ...{ sessions: [], events: [], ballots: [], photos: [], kitchen: club },
    trial: { ...trial, id: plan.trialId, planId: plan.id, createdAt: onDay(4, 12), revision: 1 },
    plans: [
      {
        ...plan,
        at: onDay(4, 12),
        question: 'How little salt does our pan loaf need?',
        expectation: null,
        factor: {
          ...{ name: 'salt', unitOfMeasure: '% of flour', splitsAt: 'mix', held: 'flour' },
          acts: { on: 'salt', ingredientId: 'salt' },
        },
        levels: [
          { id: 'lv-low', value: 1.35, label: '1.35', control: false },
          { id: 'lv-mid', value: 1.85, label: '1.85', control: true },
          { id: 'lv-high', value: 2.45, label: '2.45', control: false },
        ],
        steps: [
          step('mix', 'Knead', { hands: 6, wait: 45 }),
          step('fold', 'Fold', { hands: 2, wait: 45, late: 15 }),
          step('ball', 'Shape into the pan', { hands: 12, wait: 20, late: 15 }),
          step('cold-proof', 'Night in the fridge', { hands: 1, wait: 12.5 * 60, late: 90 }),
          step('proof', 'Last rise', { hands: 1, wait: 70, early: 10, late: 20 }),
          {
            ...step('bake', 'Bake', { hands: 1, wait: 36, late: 2 }),
            ...{ per: 'piece', uses: ['hands', 'oven'], pullSeconds: 60, celsius: 210 },
          },
          { ...step('cool', 'Cool', { hands: 0, wait: 120, late: 60 }), per: 'piece' },
          { ...step('cut', 'Cut', { hands: 3, late: 60 }), per: 'piece' },
        ],
        responses: plan.responses.filter(({ id }) => id === plan.mainResponseId),
        ...{ serving: 'rested', flights: 1, warmUpPiece: false, placesPerLoad: 3 },
        ...{ plannedSessions: 1, tasters: club.map(({ id }) => ({ tasterId: id, knows: false })) },
        day: {
          fixed: { what: 'start', at: onDay(4, 18) },
          quiet: { fromMinutes: 23 * 60, toMinutes: 6.5 * 60 },
          helpers: [{ fromAt: onDay(4, 19, 30), untilAt: onDay(4, 20, 30) }],
        },
      },
    ],
  }
}
