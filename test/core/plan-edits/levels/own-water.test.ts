import { expect, test } from 'vitest'
import { withFactorKind } from '@/core/plan-edits/factor/factor-for-kind.ts'
import { hasOwnWater, withOwnWater, withSameWater } from '@/core/plan-edits/levels/own-water.ts'
import { counting, planOfTest } from '../plan-of-test.ts'

const choice = withFactorKind(planOfTest(), 'choice', counting('new'))

test('each option gets the water the formula has, 70 %, and keeps one it has already', () => {
  const [first, ...others] = choice.levels
  if (!first) throw new Error('no option')
  const tool = { what: 'tool' as const, name: 'Stone' }
  const water = { what: 'hydration' as const, percent: 74 }
  const plan = { ...choice, levels: [{ ...first, changes: [tool, water] }, ...others] }
  expect(hasOwnWater(choice)).toBe(false)
  const own = withOwnWater(plan)
  expect(hasOwnWater(own)).toBe(true)
  expect(own.levels.map(({ changes }) => changes)).toEqual([
    [tool, water],
    [{ what: 'hydration', percent: 70 }],
  ])
  const same = withSameWater(own)
  expect(same.levels.map(({ changes }) => changes)).toEqual([[tool], undefined])
  expect(hasOwnWater(same)).toBe(false)
  expect(withSameWater(withOwnWater(choice))).toEqual(choice)
})
