import { expect, test } from 'vitest'
import {
  achievedRows,
  inColumns,
  riderRows,
  sheetColumns,
  weighSheetRows,
} from '@/app/plan/panels/weigh-sheet-rows.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { withFactorKind } from '@/core/plan-edits/factor/factor-for-kind.ts'
import { levelRiders } from '@/core/trial/level-riders.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { counting, idOf, planOfTest } from '../../../core/plan-edits/plan-of-test.ts'

const scale: KitchenThing = {
  id: 'scale',
  kind: 'scale',
  name: 'Bench scale',
  resolutionGrams: 0.1,
  capacityGrams: 2000,
}

test('weights are written with the decimals the scale shows', () => {
  const plan = planOfTest()
  const rows = weighSheetRows(weighSheet(plan, [scale]), plan.formula)
  // 500 g flour: water 66, 70, 74 % = 330, 350, 370 g; salt 2 % = 10 g; yeast 0.8 % = 4 g.
  expect(rows.map(({ head, cells }) => [head, ...cells])).toEqual([
    ['Bread flour', '500.0', '500.0', '500.0'],
    ['Water', '330.0', '350.0', '370.0'],
    ['Salt', '10.0', '10.0', '10.0'],
    ['Instant yeast', '4.0', '4.0', '4.0'],
  ])
})

test('dough and the achieved level stand under them, with the uncertainty in one figure', () => {
  const plan = planOfTest()
  const rows = achievedRows(weighSheet(plan, [scale]), '%')
  // Dough 500 × 1.688, 1.728, 1.768. u = 0.1/√6 = 0.0408 g; at 66 %: 66 √((u/330)² + (u/500)²) = 0.0098, U = 0.02.
  expect(rows[0]?.cells).toEqual(['844', '864', '884'])
  expect(rows.slice(1).map(({ cells }) => cells[0])).toEqual(['66.00', '0.02'])
})

test('only what differs between the levels is said to ride along', () => {
  const rows = riderRows(levelRiders(planOfTest()))
  // Salt of the water: 2/66, 2/70, 2/74 = 3.03, 2.86, 2.70 %; yeast 0.8/66 … = 1.21, 1.14, 1.08 %.
  expect(rows.map(({ key, cells }) => [key, ...cells])).toEqual([
    ['salt', '3.03', '2.86', '2.70'],
    ['yeast', '1.21', '1.14', '1.08'],
  ])
})

test('a level that cannot be made keeps its column, with dashes', () => {
  const whole = planOfTest()
  const levels = whole.levels.map((level, at) => (at === 1 ? { ...level, value: null } : level))
  const plan = { ...whole, levels }
  const sheet = weighSheet(plan, [scale])
  expect(sheet.unmadeLevelIds).toEqual([levels[1]?.id])
  const columns = sheetColumns(sheet, plan.levels)
  expect(columns).toEqual(levels.map(({ id }) => id))
  const rows = [...weighSheetRows(sheet, plan.formula), ...achievedRows(sheet, '%')]
  expect(inColumns(rows, sheet, columns).map(({ cells }) => cells)).toEqual([
    ['500.0', '–', '500.0'],
    ['330.0', '–', '370.0'],
    ['10.0', '–', '10.0'],
    ['4.0', '–', '4.0'],
    ['844', '–', '884'],
    ['66.00', '–', '74.00'],
    ['0.02', '–', '0.02'],
  ])
})

test('a dose that goes into a preferment is named as both', () => {
  const start = withFactorKind(planOfTest(), 'preferment-share', counting('new'))
  const yeast = idOf(start, 'Instant yeast')
  const plan = { ...start, sharedDoses: [{ ingredientId: yeast, by: 'dry-mix' as const }] }
  const heads = weighSheetRows(weighSheet(plan, [scale]), plan.formula).map(({ head }) => head)
  expect(heads).toContain('Instant yeast, of the dry mix, for the Poolish')
  expect(heads).toContain('Instant yeast, of the dry mix')
})
