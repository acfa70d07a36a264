import { expect, test } from 'vitest'
import { lineText, pieceName, whichBefore } from '@/app/bench/line-name.ts'
import { madePlan } from '../../core/made-plan.ts'
import { madeSession, pieceAt } from '../../core/session/made-session.ts'

const plan = madePlan({ sparePieces: 2 })
const session = madeSession(plan)
const namesOf = (levelId: string) =>
  session.pieces
    .filter((piece) => piece.levelId === levelId)
    .map(({ id }) => ({ kind: 'piece', id }) as const)

test('no two pieces of a line read the same, at the clocks, in the log or at undo', () => {
  // The control's line: a warm-up piece, one in each of two flights, two spares.
  const ofControl = namesOf('lv-mid')
  expect(ofControl).toHaveLength(5)
  expect(new Set(ofControl.map(({ id }) => pieceName(session, plan, id).which))).toEqual(
    new Set(['warm-up', 'flight 1', 'flight 2', 'spare 1', 'spare 2']),
  )
  for (const name of [lineText, whichBefore])
    expect(new Set(ofControl.map((unit) => name(session, plan, unit))).size).toBe(5)
})

test('what tells a piece apart gives away no code; a dough has its letter alone', () => {
  const unit = { kind: 'piece', id: pieceAt(session, 'lv-low', 1).id } as const
  const { letter } = pieceName(session, plan, unit.id)
  expect(lineText(session, plan, unit)).toBe(`${letter}, flight 2`)
  expect(whichBefore(session, plan, unit)).toBe('Flight 2: ')
  const [batch = ''] = session.dealt.doughOrder
  expect(lineText(session, plan, { kind: 'batch', id: batch })).toMatch(/^[A-Z]$/)
  expect(whichBefore(session, plan, { kind: 'batch', id: batch })).toBe('')
})
