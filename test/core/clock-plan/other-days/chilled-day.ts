import type { DayWishes } from '@/core/trial/day-wishes.ts'
import { civilMoment } from '@/core/wording/words/civil-moment.ts'
import { madePlan, madeStep } from '../../made-plan.ts'

export const zone = 'Europe/Zurich'
export const quiet = { fromMinutes: 23 * 60, toMinutes: 6 * 60 + 30 }

/** Saturday, 5 December 2026, winter time. */
export const saturday = (hour: number, minute = 0) =>
  civilMoment({ year: 2026, month: 12, day: 5, hour, minute }, zone)

/** Four doughs: mixed 5 min each, cold for `hours`, an hour at room warmth, baked one after another. */
export const chilled = (hours: number, day: DayWishes) =>
  madePlan({
    ...{ flights: 1, warmUpPiece: false, placesPerLoad: 1, serving: 'rested', day },
    steps: [
      madeStep('mix', 'mix', { name: 'Mix', handsSeconds: 300 }),
      madeStep('cold', 'cold-proof', {
        ...{ name: 'Night in the fridge', handsSeconds: 0, uses: [] },
        ...{ waitSeconds: hours * 3600, earlySeconds: 1800, lateSeconds: 1800 },
      }),
      madeStep('proof', 'proof', { name: 'Proof', handsSeconds: 60, waitSeconds: 3600 }),
      madeStep('bake', 'bake', {
        ...{ name: 'Bake', handsSeconds: 20, waitSeconds: 240, uses: ['hands', 'oven'] },
      }),
    ],
  })
