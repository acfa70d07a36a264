import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { thresholdsTable } from '@/core/wording/thresholds-table.ts'

test('docs/methods.md shows the thresholds that the fairness check uses (npm run thresholds renews them)', () => {
  expect(readFileSync('docs/methods.md', 'utf8')).toContain(thresholdsTable())
})
