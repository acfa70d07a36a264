import { expect, test } from 'vitest'
import type { Formula } from '@/core/formula/formula-record.ts'
import { formulaViews } from '@/core/formula/formula-views.ts'
import { hydrationPercent } from '@/core/formula/hydration.ts'
import { formulaAsWeighed } from '@/core/learned/formula-as-weighed.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { aPlan, levelsOf, plainFormula, scale } from '../trial/a-plan.ts'

const formula: Formula = {
  ...plainFormula,
  preferments: [
    {
      ...{ id: 'poolish', name: 'poolish', kind: 'poolish', flourSharePercent: 20 },
      ...{ clingsGrams: 10 },
      parts: [
        { ingredientId: 'flour', percent: 100 },
        { ingredientId: 'water', percent: 100 },
      ],
    },
  ],
}
const plan = aPlan({ formula, kitchenIds: [], plannedSessions: 1, levels: levelsOf([70], 70) })
const [batch] = weighSheet(plan, [scale(0.1, 5000)]).batches
if (!batch) throw new Error('no batch')

const weighed = (waterGrams: number) =>
  formulaAsWeighed(batch, [
    { ingredientId: 'flour', prefermentId: 'poolish', grams: 205, readings: 1 },
    { ingredientId: 'water', prefermentId: 'poolish', grams: waterGrams, readings: 1 },
  ])

test('what clings to the jar is weighed and never in the dough', () => {
  const made = weighed(205)
  if (!made) throw new Error('no formula')
  // 410 g made, 10 g left behind: 200 g of flour and of water reach the dough, as the formula says
  expect(hydrationPercent(made)).toBeCloseTo(70, 9)
  expect(formulaViews(made).preferments[0]?.totalGrams).toBeCloseTo(400, 9)
})

test('of a weight that is off, the jar keeps its share too', () => {
  const made = weighed(225.5)
  if (!made) throw new Error('no formula')
  // 20.5 g of water more, of which 400 / 410 reach the dough: 20 g on 700, over 1000 g of flour
  expect(hydrationPercent(made)).toBeCloseTo(72, 9)
})
