import { expect, test } from 'vitest'
import { columnLooks, headsOnOneLine } from '@/core/report/column-look.ts'
import type { TableBlock } from '@/core/report/report-block.ts'

const rungs: TableBlock = {
  kind: 'table',
  caption: 'How far the evidence carries',
  head: ['Rung', 'F', 'Says'],
  rows: [
    ['These pieces', '4.53', 'not settled'],
    ['These doughs', '–', 'With one flight there is one piece of each level.'],
  ],
  figures: [false, true, false],
}

test('a column with a sentence in it is running text, one of single words is not', () => {
  expect(columnLooks(rungs)).toEqual(['few', 'figure', 'words'])
  expect(columnLooks({ ...rungs, rows: rungs.rows.slice(0, 1) })).toEqual(['few', 'figure', 'few'])
})

test('levels, pairs and rungs keep to one line; a baker’s own long names do not', () => {
  expect(headsOnOneLine(rungs)).toBe(true)
  expect(headsOnOneLine({ ...rungs, rows: [['1.2 → 1.6 %', '2', '']] })).toBe(true)
  const long = 'Whole wheat flour of the mill in the valley'
  expect(headsOnOneLine({ ...rungs, rows: [...rungs.rows, [long, '–', '']] })).toBe(false)
})
