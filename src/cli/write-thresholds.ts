import { readFileSync, writeFileSync } from 'node:fs'
import { thresholdsTable } from '@/core/wording/fairness/thresholds-table.ts'

const page = 'docs/methods.md'
const mark = '<!-- thresholds -->'

/** Renews the table of the fairness check's sizes between its two marks in docs/methods.md. */
export function run(): void {
  const [before, , after] = readFileSync(page, 'utf8').split(mark)
  writeFileSync(page, [before, `\n\n${thresholdsTable()}\n\n`, after].join(mark))
}
