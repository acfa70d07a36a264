import { expect, test } from 'vitest'
import { inColumns, riderRows, sheetColumns } from '@/app/plan/panels/weigh-sheet-rows.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { levelRiders } from '@/core/trial/level-riders.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { writtenSheet } from '@/core/weighing/written-sheet.ts'
import { planOfTest } from '../../../core/plan-edits/plan-of-test.ts'

const scale: KitchenThing = {
  id: 'scale',
  kind: 'scale',
  name: 'Bench scale',
  resolutionGrams: 0.1,
  capacityGrams: 2000,
}

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
  const { weights, comesTo } = writtenSheet(sheet, '%')
  const rows = [...weights, ...comesTo]
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
