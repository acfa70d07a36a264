import { expect, test } from 'vitest'
import { levelBetween } from '@/core/plan-edits/levels/level-between.ts'
import { roundedToStep, steppedValue } from '@/core/plan-edits/levels/stepped-value.ts'
import { startingPlan } from '@/core/plan-edits/start/starting-plan.ts'

let count = 0
const plan = startingPlan({ newId: () => `id-${count++}`, at: 0, zone: 'UTC' })
const [first, second] = plan.levels

test('a level added in a gap stands half way, at a round value, and counts no level past the most', () => {
  // 66 and 70: half way is 68
  const next = levelBetween(plan, first?.id ?? '', second?.id ?? '', 'new')
  expect(next.levels.map(({ value }) => value)).toEqual([66, 68, 70, 74])
  const full = {
    ...plan,
    levels: Array.from({ length: 12 }, (_, at) => ({
      id: `${at}`,
      value: at,
      label: `${at}`,
      control: false,
    })),
  }
  expect(levelBetween(full, '0', '1', 'new')).toBe(full)
})

test('two whole numbers that are neighbours still take one between them', () => {
  const close = {
    ...plan,
    levels: [1, 2].map((value) => ({ id: `${value}`, value, label: `${value}`, control: false })),
  }
  expect(levelBetween(close, '1', '2', 'new').levels.map(({ value }) => value)).toEqual([1, 1.5, 2])
})

test('keys and drags move a level in steps as fine as the levels were typed', () => {
  expect(steppedValue(70, 1, plan.levels)).toBe(71)
  expect(roundedToStep(70.4, plan.levels)).toBe(70)
  const fine = [{ value: 1.4 }, { value: 2.6 }]
  expect(steppedValue(1.8, -1, fine)).toBe(1.7)
})
