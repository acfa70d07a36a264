import type { DayWishes } from '@/core/trial/day-wishes.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { civilMoment } from '@/core/wording/words/civil-moment.ts'
import { madePlan, madeStep } from '../made-plan.ts'

export const zone = 'Europe/Vienna'
export const quiet = { fromMinutes: 23 * 60, toMinutes: 6 * 60 + 30 }

/** Friday, 4 December 2026, winter time. */
export const friday = (hour: number, minute = 0) =>
  civilMoment({ year: 2026, month: 12, day: 4, hour, minute }, zone)

export const startsAt = (at: number): DayWishes => ({ fixed: { what: 'start', at }, quiet })
export const eatsAt = (at: number): DayWishes => ({ fixed: { what: 'eat', at }, quiet })

/** Four loaves, mixed and proved for two hours or so, baked one after another, cooled for an hour and cut. */
export const fourLoaves = (day: DayWishes, change: Partial<Plan> = {}) =>
  madePlan({
    ...{ zone, day, serving: 'rested', flights: 1, warmUpPiece: false, placesPerLoad: 1 },
    steps: [
      madeStep('mix', 'mix', { handsSeconds: 300, waitSeconds: 1800, lateSeconds: 300 }),
      madeStep('proof', 'proof', { handsSeconds: 120, waitSeconds: 4200, lateSeconds: 600 }),
      madeStep('bake', 'bake', { handsSeconds: 30, waitSeconds: 1500, uses: ['hands', 'oven'] }),
      madeStep('cool', 'cool', {
        ...{ per: 'piece', handsSeconds: 0, waitSeconds: 3600, uses: [] },
        ...{ earlySeconds: 1200, lateSeconds: 1200 },
      }),
      madeStep('cut', 'cut', { per: 'piece', handsSeconds: 120, waitSeconds: 0 }),
    ],
    ...change,
  })
