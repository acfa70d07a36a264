import { expect, test } from 'vitest'
import { textTable } from '@/cli/text-table.ts'

test('more columns than the page is wide go on in a table below, the first column again', () => {
  // Beside a first column of 20 stand (80 − 20) / (2 + 18) = 3 columns of 18.
  const head = [
    'what'.padEnd(20, '.'),
    ...[1, 2, 3, 4].map((each) => `level ${each}`.padEnd(18, '.')),
  ]
  const table = textTable(head, [['Salt', '1', '2', '3', '4']], [false, true, true, true, true])
  const [first = '', second = ''] = table.split('\n\n')
  expect(first.split('\n')[0]).toHaveLength(80)
  expect(first).toMatch(/^Salt +1 +2 +3$/m)
  expect(second).toMatch(/^what\.+ +level 4/)
  expect(second).toMatch(/^Salt +4$/m)
})

test('one column too wide for any page still stands beside the first', () => {
  const table = textTable(['a', 'b'.repeat(100)], [['1', '2']], [false, true])
  expect(table.split('\n\n')).toHaveLength(1)
})
