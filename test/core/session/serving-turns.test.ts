import { expect, test } from 'vitest'
import { servingTurns } from '@/core/session/serving-turns.ts'
import { sessionOf } from '../../trial-of/session-of.ts'

test('codes come to the table with the warm-up first, then in the order of the flight', () => {
  // The flight bakes piece-2 (905) before piece-1 (472); piece-0 (318) warms up.
  expect(servingTurns(sessionOf(), []).map(({ code }) => code)).toEqual(['318', '905', '472'])
})

test('what is not served has no turn', () => {
  expect(servingTurns(sessionOf(), ['piece-2']).map(({ code }) => code)).toEqual(['318', '472'])
})
