import { expect, test } from 'vitest'
import { between, visibleName, wholeBetween } from '@/app/plan/field/field-checks.ts'
import { withControl } from '@/core/plan-edits/levels/control.ts'
import { withSeries } from '@/core/plan-edits/levels/level-series.ts'
import { measuredLevel } from '@/core/plan-edits/levels/measured-level.ts'
import { nextLevelValue } from '@/core/plan-edits/levels/next-level.ts'
import { moved } from '@/core/plan-edits/parts/in-part.ts'
import { movedBy } from '@/core/wording/plan/moved-by.ts'
import { counting, idOf, planOfTest } from '../plan-of-test.ts'

const things = ['a', 'b', 'c'].map((id) => ({ id }))
const order = (list: readonly { id: string }[]) => list.map(({ id }) => id).join('')

test('a thing moves by one place and stops at the ends', () => {
  expect(order(moved(things, 'c', -1))).toBe('acb')
  expect(order(moved(things, 'a', 1))).toBe('bac')
  expect(order(moved(things, 'a', -1))).toBe('abc')
  expect(order(moved(things, 'c', 1))).toBe('abc')
})

test('one control at most, and the mark can be taken away', () => {
  const plan = planOfTest()
  const [first] = plan.levels
  const marked = withControl(plan, first?.id ?? '')
  expect(marked.levels.map(({ control }) => control)).toEqual([true, false, false])
  const none = withControl(marked, first?.id ?? '')
  expect(none.levels.map(({ control }) => control)).toEqual([false, false, false])
})

test('a series keeps the levels that stood at its values, with their ids and marks', () => {
  const plan = planOfTest()
  const next = withSeries(plan, [62, 66, 70], counting('new'))
  expect(next.levels.map(({ id }) => id)).toEqual(['new1', plan.levels[0]?.id, plan.levels[1]?.id])
  expect(next.levels.map(({ label, control }) => [label, control])).toEqual([
    ['62', false],
    ['66', false],
    ['70', true],
  ])
})

test('a new level goes one step past the last; the first is what the plan has now', () => {
  const plan = planOfTest()
  expect(nextLevelValue(plan)).toBe(78)
  expect(nextLevelValue({ ...plan, levels: [] })).toBe(70)
  const tenths = [64.1, 64.2].map((value) => measuredLevel(String(value), value))
  expect(nextLevelValue({ ...plan, levels: tenths })).toBe(64.3)
})

test('the moved ingredient shows the span of the levels instead of a percent', () => {
  const plan = planOfTest()
  expect(movedBy(plan, idOf(plan, 'Water'))).toBe('for 66 to 74 % hydration')
  expect(movedBy(plan, idOf(plan, 'Salt'))).toBeNull()
})

test('checks name the mend and refuse 1e308, NaN and what is not whole', () => {
  const percent = between(0, 1000, '%')
  expect(percent(66)).toBeUndefined()
  expect(percent(1e308)).toBe('Write a number from 0 to 1000 %.')
  expect(percent(Number.NaN)).toBeDefined()
  expect(wholeBetween(1, 24)(2.5)).toBe('Write a whole number from 1 to 24.')
  expect(visibleName('a name')('  ')).toBe('Write a name; it cannot stay empty.')
  expect(visibleName('a name')('🍞')).toBeUndefined()
})

test('a series without the control’s value hands the mark to the nearest, and keeps it where the value stays', () => {
  const controls = (values: number[]) =>
    withSeries(planOfTest(), values, counting('new'))
      .levels.filter(({ control }) => control)
      .map(({ value }) => value)
  // The control is 70: 71 lies nearer than 68; 69 and 71 lie alike, and the lower is taken.
  expect(controls([65, 68, 71])).toEqual([71])
  expect(controls([69, 71])).toEqual([69])
  expect(controls([60, 70, 80])).toEqual([70])
})
