import { expect, test } from 'vitest'
import { optionsOf, toldIn, withMeaning } from '@/app/findings/table/table-choices.ts'

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
    margin: ' 0,5 ',
    better: 'lower',
  }
  expect(optionsOf(choices)).toEqual({ as: [], unit: 'piece', tidyAs: 'Liking' })
  expect(toldIn(choices)).toMatchObject({ control: 64.5, margin: 0.5, better: 'lower', main: null })
})

test('what is no choice is none: an unknown meaning, a margin of zero or of words', () => {
  expect(optionsOf({ 'as Who': 'weather', unit: 'loaf' })).toEqual({ as: [], unit: 'batch' })
  for (const margin of ['0', '-1', 'a lot', ''])
    expect(toldIn({ margin }).margin, margin).toBeNull()
})
