import { describe, expect, it } from 'vitest'
import { pieceProblems } from '@/core/trial/piece-problems.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { planProblemText } from '@/core/wording/plan/plan-problem-text.ts'
import { aPlan, factorOf, levelsOf, plainFormula } from './a-plan.ts'

const heavy = (flourGrams: number, change: Partial<Plan> = {}) =>
  aPlan({
    factor: { ...factorOf({ on: 'piece-mass' }, 'piece'), splitsAt: 'divide' },
    levels: levelsOf([810, 860, 910], 860),
    formula: { ...plainFormula, batchSize: { by: 'flour', flourGrams } },
    flights: 1,
    ...change,
  })
const said = (plan: Plan) => pieceProblems(plan).map(planProblemText)

describe('pieceProblems of a batch sized by its flour', () => {
  // 100 + 70 + 2 + 0.4 = 172.4 % of the flour: 300 g make 517.2 g of dough; 910 g want 910 / 1.724 = 527.8 g of flour.
  it('names the heaviest level, its grams and the flour that would do', () => {
    expect(said(heavy(300))).toEqual([
      '1 piece of level 910 asks for 910 g, but a batch of this flour is 517 g of dough; enter 528 g of flour or more, or make smaller or fewer pieces.',
    ])
    expect(said(heavy(527))).toHaveLength(1)
    expect(said(heavy(528))).toEqual([])
  })

  it('counts flights, spares and the warm-up piece of the control', () => {
    // The control's dough gives 1 + 1 + 1 pieces of 860 g: 2580 g, more than 2 × 910 = 1820 g; 2580 / 1.724 = 1496.5 g.
    const three = { sparePieces: 1, warmUpPiece: true }
    expect(pieceProblems(heavy(1496, three))).toMatchObject([{ label: '860', grams: 2580 }])
    expect(said(heavy(1497, three))).toEqual([])
  })

  it('adds up the pieces of all levels where one dough serves them', () => {
    // 810 + 860 + 910 = 2580 g.
    expect(pieceProblems(heavy(1496, { doughs: 'one' }))).toMatchObject([
      { label: null, pieces: 3, grams: 2580, leastFlourGrams: 1497 },
    ])
    expect(said(heavy(1497, { doughs: 'one' }))).toEqual([])
  })

  it('knows no piece mass where another thing is the factor', () => {
    expect(said(aPlan())).toEqual([])
  })
})
