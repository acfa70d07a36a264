import { expect, test } from 'vitest'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import { servingTurns } from '@/core/session/serving-turns.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { sessionOf } from '../../trial-of/session-of.ts'
import { madeLog } from './made-events.ts'

const asBaked = { serving: 'as-baked' } as const

test('codes come to the table with the warm-up first, then in the order of the flight', () => {
  // The flight bakes piece-2 (905) before piece-1 (472); piece-0 (318) warms up.
  expect(servingTurns(sessionOf(), asBaked, [], []).map(({ code }) => code)).toEqual([
    '318',
    '905',
    '472',
  ])
})

test('what is not served has no turn', () => {
  expect(servingTurns(sessionOf(), asBaked, [], ['piece-2']).map(({ code }) => code)).toEqual([
    '318',
    '472',
  ])
})

test('where the oven was given another order, the codes come as they left it, and what is not launched last', () => {
  const { events, log } = madeLog()
  const codes = (plan: Pick<Plan, 'serving'> = asBaked) =>
    servingTurns(sessionOf(), plan, effectiveEvents(events), []).map(({ code }) => code)
  const bake = (kind: 'bake-in' | 'bake-out', id: string, at: number) =>
    log({ kind }, { about: { kind: 'piece', id }, at })
  bake('bake-in', 'piece-1', 1000)
  expect(codes()).toEqual(['318', '472', '905'])
  bake('bake-in', 'piece-2', 2000)
  expect(codes()).toEqual(['318', '472', '905'])
  // The one launched later is pulled first, and so comes first; rested, they come as they were dealt.
  bake('bake-out', 'piece-2', 3000)
  expect(codes()).toEqual(['318', '905', '472'])
  bake('bake-out', 'piece-1', 4000)
  expect(codes()).toEqual(['318', '905', '472'])
  // A corrected time moves nothing that was served already.
  const served = sessionOf().dealt.servings.find(({ code }) => code === '472')?.id ?? ''
  log({ kind: 'served' }, { about: { kind: 'serving', id: served }, at: 5000 })
  expect(codes()).toEqual(['318', '472', '905'])
  expect(codes({ serving: 'rested' })).toEqual(['318', '905', '472'])
})
