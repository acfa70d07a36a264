import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { thresholdsTable } from '@/core/wording/fairness/thresholds-table.ts'

/** Cells without the padding that the formatter gives a table. */
const cellsOf = (text: string) =>
  text
    .split('\n')
    .filter((line) => line.startsWith('|'))
    .map((line) => line.split('|').map((cell) => cell.trim().replace(/^-+(:?)$/, '---$1')))

test('docs/methods.md shows the thresholds that the fairness check uses (npm run thresholds renews them)', () => {
  const [, section = ''] = readFileSync('docs/methods.md', 'utf8').split('<!-- thresholds -->')
  expect(cellsOf(section)).toEqual(cellsOf(thresholdsTable()))
})
