import { expect, it } from 'vitest'
import { mayBakeInOwnOrder } from '@/core/clock-plan/own-bake-order.ts'
import { problemOfDay } from '@/core/clock-plan/problem-of-day.ts'
import { goes, mostRung } from '@/core/clock-plan/search/solve-day.ts'
import { madePlan, madeStep } from '../made-plan.ts'
import { madeSession } from '../session/made-session.ts'
import { countedBudget } from './search/counted-budget.ts'

/** Four doughs mixed five minutes apart; `hours` in the fridge, good to an hour. */
const chilled = (hours: number, lateSeconds = 3600) =>
  madePlan({
    ...{ flights: 1, warmUpPiece: false, placesPerLoad: 1 },
    steps: [
      madeStep('mix', 'mix', { handsSeconds: 300 }),
      madeStep('cold', 'cold-proof', {
        ...{ handsSeconds: 0, waitSeconds: hours * 3600, uses: [] },
        ...{ earlySeconds: lateSeconds, lateSeconds },
      }),
      madeStep('bake', 'bake', { handsSeconds: 20, waitSeconds: 240, uses: ['hands', 'oven'] }),
    ],
  })

it('asks how equal the planner keeps the doughs: minutes apart are nothing after two days, and much after an hour', () => {
  // Reversed, the four are 3 × (300 s + 320 s) = 31 min apart at the least. Harmless is 5 % of the age, a quarter of that here
  // asked: 36 min of 48 h, 45 s of 1 h.
  expect(mayBakeInOwnOrder(chilled(48))).toBe(true)
  expect(mayBakeInOwnOrder(chilled(1))).toBe(false)
  // Where no wait can stretch nor shrink, the ages still are what they are: only their tolerance counts.
  expect(mayBakeInOwnOrder(chilled(1, 60))).toBe(false)
})

it('holds for a deal: the day it allows is found with the drawn orders too', () => {
  const plan = chilled(48)
  const { problem } = problemOfDay(plan, madeSession(plan))
  expect(goes(problem, countedBudget(1_000_000), () => mostRung)).toBe(true)
})

it('leaves the order to the draw where one dough serves all, and where the levels take differently long', () => {
  expect(mayBakeInOwnOrder(madePlan({ doughs: 'one', factor: late }))).toBe(false)
  const hours = { on: 'cold-hours' as const, stepId: 'cold' }
  const factor = { ...madePlan().factor, splitsAt: 'proof' as const, acts: hours }
  const levels = madePlan().levels.map((level, at) => ({ ...level, value: 24 - 6 * at }))
  expect(mayBakeInOwnOrder({ ...chilled(1), factor, levels, doughs: 'apart' })).toBe(true)
})

const late = { ...madePlan().factor, splitsAt: 'oven' as const, acts: { on: 'own' as const } }
