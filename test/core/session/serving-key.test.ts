import { expect, test } from 'vitest'
import { servingKey } from '@/core/session/serving-key.ts'
import { sessionOf } from '../../trial-of/session-of.ts'

test('every code of the session stands once in the key, on the piece it was dealt to', () => {
  const session = sessionOf()
  const { pieces, sets } = servingKey(session)
  expect(pieces).toHaveLength(session.dealt.servings.length)
  expect(new Set(pieces.map(({ code }) => code)).size).toBe(pieces.length)
  for (const { code, pieceId, levelId, letter } of pieces) {
    expect(session.dealt.servings.find((each) => each.code === code)?.pieceId).toBe(pieceId)
    expect(session.pieces.find(({ id }) => id === pieceId)?.levelId).toBe(levelId)
    expect(session.dealt.letters.find((each) => each.levelId === levelId)?.letter).toBe(letter)
  }
  expect(sets).toHaveLength(session.dealt.sets.length)
})

test('a tell-apart set shows what lies under its codes in the order it is offered', () => {
  const session = sessionOf()
  const [first, second] = session.dealt.letters
  if (!first || !second) throw new Error('the session has two letters')
  const samples = [
    { code: '731', levelId: first.levelId },
    { code: '264', levelId: second.levelId },
  ]
  const set = { id: 'set-1', tasterId: 'taster-1', samples, answerCode: '264' }
  const dealt = { ...session.dealt, sets: [set] }
  expect(servingKey({ ...session, dealt }).sets).toEqual([
    {
      tasterId: 'taster-1',
      samples: [
        { ...samples[0], letter: first.letter },
        { ...samples[1], letter: second.letter },
      ],
    },
  ])
})
