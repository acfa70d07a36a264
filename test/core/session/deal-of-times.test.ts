import { describe, expect, it } from 'vitest'
import { dealSession } from '@/core/session/deal-session.ts'
import { ordersByLevel } from '@/core/session/earlier-orders.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { countedIds, madePlan, madeStep } from '../made-plan.ts'

function dealt(plan: Plan, number = 1, earlier: Session[] = [], trialSeed = 42): Session {
  const newId = countedIds(`s${number}`)
  const made = dealSession({ plan, trialSeed, number, earlier, at: 0, zone: plan.zone, newId })
  if (!made.ok) throw new Error(made.reason)
  return made.session
}

const levelIds = madePlan().levels.map((level) => level.id)

describe('dealSession where a time is the factor', () => {
  const coldHours = (doughs: 'one' | 'apart') => ({
    ...{ doughs, flights: 2, warmUpPiece: false, serving: 'rested' as const },
    factor: {
      ...{ name: 'cold proof', unitOfMeasure: 'h', splitsAt: 'proof' as const },
      ...{ held: 'flour' as const, acts: { on: 'cold-hours' as const, stepId: 'cold' } },
    },
    levels: madePlan().levels.map((level, at) => ({ ...level, value: 24 - 6 * at })),
    steps: [
      ...madePlan().steps.slice(0, 4),
      madeStep('cold', 'cold-proof'),
      madeStep('bake', 'bake'),
    ],
  })

  it('bakes pieces of one dough as they get ready where a time is the factor', () => {
    // Levels of 24, 18, 12 and 6 h, two pieces of each: 6, 6, 12, 12, 18, 18, 24, 24, whatever was drawn.
    for (const seed of [1, 2, 3]) {
      const session = dealt(madePlan(coldHours('one')), 1, [], seed)
      const levelOf = new Map(session.pieces.map(({ id, levelId }) => [id, levelId]))
      expect(
        session.dealt.loads.flatMap(({ pieceIds }) => pieceIds.map((id) => levelOf.get(id))),
      ).toEqual(levelIds.toReversed().flatMap((id) => [id, id]))
    }
  })

  it('begins doughs mixed apart so that they meet in the oven where a time is the factor', () => {
    // Hours apart against minutes of stagger: the 24 h dough is begun first, the 6 h dough last, in every session.
    const plan = madePlan(coldHours('apart'))
    const first = dealt(plan)
    for (const session of [first, dealt(plan, 2, [first])])
      expect(ordersByLevel(session, levelIds).dough).toEqual([0, 1, 2, 3])
    const flights = [1, 2, 3, 4].map(
      (seed) => ordersByLevel(dealt(plan, 1, [], seed), levelIds).bake,
    )
    expect(new Set(flights.map((order) => JSON.stringify(order))).size).toBeGreaterThan(1)
  })
})
