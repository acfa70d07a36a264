import { expect, test } from 'vitest'
import { withDoughs } from '@/core/plan-edits/pieces/with-doughs.ts'
import { madePlan } from '../../made-plan.ts'

const plan = madePlan({ flights: 2, sparePieces: 0, warmUpPiece: false })

// Four levels, two flights: two pieces of each dough mixed apart, eight of the one dough.
test('one dough for all is four times as large, and mixed apart it is what it was', () => {
  const one = withDoughs(plan, { splitsAt: 'proof', doughs: 'one' })
  expect(one.formula.batchSize).toEqual({ by: 'flour', flourGrams: 1600 })
  expect([one.factor.splitsAt, one.doughs]).toEqual(['proof', 'one'])
  expect(withDoughs(one, { doughs: 'apart' }).formula.batchSize).toEqual(plan.formula.batchSize)
  expect(withDoughs(one, { splitsAt: 'mix' })).toEqual(plan)
})

test('a batch of pieces gives as many more', () => {
  const batchSize = { by: 'pieces' as const, pieces: 2, pieceGrams: 250, lossPercent: 0 }
  const sized = { ...plan, formula: { ...plan.formula, batchSize } }
  const one = withDoughs(sized, { splitsAt: 'oven', doughs: 'one' })
  expect(one.formula.batchSize).toEqual({ ...batchSize, pieces: 8 })
})
