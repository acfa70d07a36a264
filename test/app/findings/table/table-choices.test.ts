import { expect, test } from 'vitest'
import {
  betterKey,
  marginKey,
  optionsOf,
  toldIn,
  withMeaning,
} from '@/app/findings/table/table-choices.ts'

test('a meaning only one column can have leaves the column that had it; others may be shared', () => {
  const first = withMeaning({}, 'Who', 'taster')
  const moved = withMeaning(first, 'Name', 'taster')
  expect(optionsOf(moved).as).toEqual([{ role: 'taster', column: 'Name' }])
  const both = withMeaning(withMeaning(moved, 'Crust', 'response'), 'Crumb', 'response')
  expect(optionsOf(both).as).toHaveLength(3)
})

test('choices become the options of reading and what was told beside it', () => {
  const choices = {
    unit: 'piece',
    tidyAs: 'Liking',
    control: '64,5',
    [marginKey('Chew')]: ' 0,5 ',
    [betterKey('Chew')]: 'lower',
    ...{ foot: 'leave-out', alike: 'one', repeats: 'replicates', levelsAre: 'choice' },
  }
  expect(optionsOf(choices)).toEqual({
    ...{ as: [], unit: 'piece', tidyAs: 'Liking' },
    ...{ foot: 'leave-out', alike: 'one', repeats: 'replicates', levelsAre: 'choice' },
  })
  expect(toldIn(choices, ['Liking', 'Chew'])).toMatchObject({
    ...{ control: 64.5, main: null },
    responses: {
      Liking: { better: 'neither', margin: null },
      Chew: { better: 'lower', margin: 0.5 },
    },
  })
})

test('what was told of the main response before each was asked about still counts', () => {
  const before = { better: 'lower', margin: '1' }
  expect(toldIn(before, ['Liking', 'Chew']).responses).toEqual({
    Liking: { better: 'lower', margin: 1 },
    Chew: { better: 'neither', margin: null },
  })
  expect(toldIn({ ...before, main: 'Chew' }, ['Liking', 'Chew']).responses.Chew?.margin).toBe(1)
})

test('what is no choice is none: an unknown meaning, a margin of zero or of words', () => {
  expect(optionsOf({ 'as Who': 'weather', unit: 'loaf' })).toEqual({ as: [], unit: 'batch' })
  for (const margin of ['0', '-1', 'a lot', ''])
    expect(toldIn({ [marginKey('y')]: margin }, ['y']).responses.y?.margin, margin).toBeNull()
})
