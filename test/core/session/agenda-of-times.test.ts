import { expect, it } from 'vitest'
import { agenda } from '@/core/session/agenda.ts'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import { madePlan } from '../made-plan.ts'
import { madeLog } from './made-events.ts'
import { madeSession } from './made-session.ts'

const minutes = (count: number) => 1_000_000 + count * 60_000

/** Minutes from the first mix until the second dough is called for, the rest being the factor in a unit; its levels as begun. */
function secondDough(values: readonly number[], unitOfMeasure: string) {
  const plan = madePlan({
    factor: {
      ...{ name: 'rest', unitOfMeasure, splitsAt: 'mix', held: 'flour' },
      acts: { on: 'rest-time', stepId: 'rest' },
    },
    levels: values.map((value) => ({ id: `lv-${value}`, value, label: '', control: false })),
  })
  const session = madeSession(plan)
  const [first = '', second = ''] = session.dealt.doughOrder
  const levelOf = (batchId: string) => session.batches.find(({ id }) => id === batchId)?.levelId
  // One piece a load, the warm-up first.
  const turnOf = (batchId: string) =>
    session.dealt.loads.findIndex(({ pieceIds }) =>
      session.pieces.some((piece) => piece.id === pieceIds[0] && piece.batchId === batchId),
    )
  const { events, log } = madeLog()
  const about = { kind: 'batch', id: first } as const
  log({ kind: 'step-started', stepId: 'mix', repeat: 1 }, { about, at: minutes(0) })
  const items = agenda(session, plan, effectiveEvents(events), minutes(1))
  return {
    levels: [levelOf(first), levelOf(second)],
    turnsBetween: turnOf(second) - turnOf(first),
    dueAt: items.find(({ batchId }) => batchId === second)?.dueAt,
  }
}

it('calls for a dough that takes shorter by so much later, and the two meet in the oven', () => {
  const { levels, turnsBetween, dueAt } = secondDough([12, 24, 48], 'h')
  expect(levels).toEqual(['lv-48', 'lv-24'])
  // One day later, and for each turn of the oven between them one bake of 20 + 240 s, a pull of 15 and 60 s of recovery.
  expect(dueAt).toBe(minutes(24 * 60) + 335_000 * turnsBetween)
})

it('calls for no dough before the hands are free', () => {
  // 1 and 2 min of rest, two bakes of 335 s between their first turns: 11:10 less or more one minute, give or take the half
  // minutes in which one works away from the oven and a quarter of the tolerances; the mix keeps the hands 8 min.
  const { levels, turnsBetween, dueAt } = secondDough([1, 2], 'min')
  expect(turnsBetween).toBe(2)
  const meets = minutes(0) + (levels[0] === 'lv-1' ? 610_000 : 730_000)
  expect(Math.abs(Number(dueAt) - meets)).toBeLessThanOrEqual(120_000)
  expect(dueAt).toBeGreaterThanOrEqual(minutes(8))
})
