import { expect, test } from 'vitest'
import { scoresOfCsv } from '@/core/findings/table/scores-of-csv.ts'

/**
 * Stated bounds for 150,000 rows: 12 s of the processor's time and 500 MB more of memory in use. 4.2 s and 143 MB were
 * measured on a busy machine; a reading that grew with the square of the rows would take minutes.
 */
const mostSeconds = 12
const mostMegabytes = 500
const rowCount = 150_000

test('150,000 rows are read within the stated time of the processor and memory', () => {
  const rows = Array.from(
    { length: rowCount },
    (_, at) => `${60 + 5 * (at % 3)},t${Math.floor(at / 3)},${1 + (at % 9)}`,
  )
  const text = ['level,taster,liking', ...rows].join('\n')
  const before = process.memoryUsage().heapUsed
  const begun = process.cpuUsage()
  const read = scoresOfCsv(text)
  const { user, system } = process.cpuUsage(begun)
  const megabytes = (process.memoryUsage().heapUsed - before) / 2 ** 20
  if (!read.ok) throw new Error(JSON.stringify(read.troubles.slice(0, 3)))
  expect(read.scores.rows).toHaveLength(rowCount)
  expect((user + system) / 1e6).toBeLessThan(mostSeconds)
  expect(megabytes).toBeLessThan(mostMegabytes)
}, 60_000)
