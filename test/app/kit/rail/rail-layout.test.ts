import { expect, test } from 'vitest'
import { railLayout } from '@/app/kit/rail/rail-layout.ts'

const named = (label: string, at: number) => ({
  ...{ id: `level-${at}`, value: null, label, control: at === 0 },
})
const flours = [
  'Strong white flour of the hill mill, one',
  'Strong white flour of the hill mill, two',
  'Half wholemeal with its bran sieved once',
].map(named)

test('the options of a choice stand whole in their tabs on a desk, in lines for which the rail has its height', () => {
  const { tabs, tabPixels } = railLayout(flours, undefined, 'plain', 960)
  expect(tabs.map(({ lines }) => lines.join(' '))).toEqual(flours.map(({ label }) => label))
  expect(tabs.map(({ numbered }) => numbered)).toEqual([null, null, null])
  expect(tabPixels).toBe(50)
})

test('on a phone, where three lines hold no name, tabs wear numbers, and each number has its whole name', () => {
  const { tabs, tabPixels } = railLayout(flours, undefined, 'plain', 328)
  expect(tabs.map(({ lines }) => lines)).toEqual([['1'], ['2'], ['3']])
  expect(tabs.map(({ numbered }) => numbered)).toEqual(
    flours.map(({ label }, at) => `${at + 1}: ${label}`),
  )
  expect(tabPixels).toBe(32)
})

test('a short name of its own is worn before a number is', () => {
  const short = flours.map((level, at) => ({
    ...level,
    shortLabel: ['One', 'Two', 'Half'][at] ?? '',
  }))
  const { tabs } = railLayout(short, undefined, 'plain', 328)
  expect(tabs.map(({ lines }) => lines)).toEqual([['One'], ['Two'], ['Half']])
})
