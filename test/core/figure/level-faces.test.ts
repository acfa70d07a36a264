import { expect, test } from 'vitest'
import { levelFaces } from '@/core/figure/level-faces.ts'

const options = ['Stone', 'The steel of the old oven'].map((name) => ({ letter: undefined, name }))

test('names are worn whole, in as many lines as the tabs may have', () => {
  expect(levelFaces(options, 10, 3)).toEqual({
    lines: [['Stone'], ['The steel', 'of the old', 'oven']],
    key: [],
  })
})

test('where one name would need more lines all wear numbers, and the key says every name', () => {
  expect(levelFaces(options, 10, 2)).toEqual({
    lines: [['1'], ['2']],
    key: ['1: Stone', '2: The steel of the old oven'],
  })
})

test('a letter stands before the name or the number', () => {
  const lettered = options.map((option, at) => ({ ...option, letter: 'BA'[at] }))
  expect(levelFaces(lettered, 30, 1).lines).toEqual([['B Stone'], ['A The steel of the old oven']])
  expect(levelFaces(lettered, 10, 1).lines).toEqual([['B 1'], ['A 2']])
})
