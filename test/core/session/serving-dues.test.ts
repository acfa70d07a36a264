import { expect, test } from 'vitest'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import { servingDues } from '@/core/session/serving-dues.ts'
import { servingDueText } from '@/core/wording/bench/serving-due-text.ts'
import { madePlan, madeStep } from '../made-plan.ts'
import { madeLog } from './made-events.ts'
import { madeSession, nth } from './made-session.ts'

const minute = 60_000

test('each code is due as many minutes out of the oven as those before it; the first as the method says', () => {
  const plan = madePlan()
  // Two minutes to cut after the bake: the first is due then.
  const cut = madeStep('cut', 'cut', { handsSeconds: 120, waitSeconds: 0 })
  const cutting = { serving: plan.serving, steps: [...plan.steps, cut] }
  const session = madeSession(plan)
  const { events, log } = madeLog()
  const order = servingDues(session, cutting, [])
  expect(order.every(({ dueAt }) => dueAt === null)).toBe(true)
  const [first, second, third] = [nth(order, 0), nth(order, 1), nth(order, 2)]
  const stepOut = (pieceId: string, at: number) =>
    log({ kind: 'bake-out' }, { about: { kind: 'piece', id: pieceId }, at })
  const serve = (id: string, at: number) =>
    log({ kind: 'served' }, { about: { kind: 'serving', id }, at })
  stepOut(first.pieceId, 100 * minute)
  expect(nth(servingDues(session, cutting, effectiveEvents(events)), 0).dueAt).toBe(102 * minute)
  // It goes out after four: so does the next, and after a second at six the mean is five.
  serve(first.id, 104 * minute)
  stepOut(second.pieceId, 110 * minute)
  expect(nth(servingDues(session, cutting, effectiveEvents(events)), 1).dueAt).toBe(114 * minute)
  serve(second.id, 116 * minute)
  stepOut(third.pieceId, 120 * minute)
  const dues = servingDues(session, cutting, effectiveEvents(events))
  expect(nth(dues, 2).dueAt).toBe(125 * minute)
  expect(servingDueText(nth(dues, 1), (at) => `m${at / minute}`)).toBe('served m116, 6 min out')
  expect(servingDueText(nth(dues, 2), (at) => `m${at / minute}`)).toBe('due m125')
  expect(servingDueText(nth(dues, 3), String)).toBe('not out of the oven yet')
})
