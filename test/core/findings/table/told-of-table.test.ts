import { expect, test } from 'vitest'
import { describedTable } from '@/core/findings/table/described-table.ts'
import { scoresOfCsv } from '@/core/findings/table/scores-of-csv.ts'

const read = scoresOfCsv(
  'level,taster,liking,chew\n61.5,AB,5,3\n64.5,AB,7,4\n61.5,CD,6,\n64.5,CD,8,2',
)
if (!read.ok) throw new Error('the table is readable')
const { scores } = read
const nothing = {
  main: null,
  responses: {},
  control: null,
  factorName: '',
  unitOfMeasure: '',
} as const

test('with nothing told the table stays as it was read', () => {
  expect(describedTable(scores, nothing)).toEqual(scores)
})

test('the main response comes first with its values; each has its own direction and margin, none where nothing was said', () => {
  const told = describedTable(scores, {
    ...nothing,
    main: 'chew',
    responses: { chew: { better: 'lower', margin: 0.5 } },
  })
  expect(told.responses.map(({ name, better, margin }) => [name, better.is, margin])).toEqual([
    ['chew', 'lower', 0.5],
    ['liking', 'neither', null],
  ])
  expect(told.rows.map(({ values }) => values)).toEqual([
    [3, 5],
    [4, 7],
    [null, 6],
    [2, 8],
  ])
})

test('the control is the level of that name; a level the table lacks marks none', () => {
  const controls = (control: number) =>
    describedTable(scores, { ...nothing, control }).levels.map((level) => level.control)
  expect(controls(64.5)).toEqual([false, true])
  expect(controls(70)).toEqual([false, false])
})

test('factor and unit get their names', () => {
  const { factor } = describedTable(scores, {
    ...nothing,
    factorName: ' Water ',
    unitOfMeasure: '%',
  })
  expect(factor).toMatchObject({ name: 'Water', unitOfMeasure: '%' })
})
