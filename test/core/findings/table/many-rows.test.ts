import { expect, test } from 'vitest'
import { responseFindings } from '@/core/findings/response-findings.ts'
import { scoresOfCsv } from '@/core/findings/table/scores-of-csv.ts'
import { scoresForSpeed } from '../../../speed/scores-for-speed.ts'

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

// Minutes and positions stand in every row, so that freshness and order are worked out as well. 0.6 s of the processor were measured.
test('all findings of 150,000 scores are worked out within 5 s of the processor', () => {
  const scores = scoresForSpeed({ levels: 6, tasters: 12, sessions: 2084 })
  expect(scores.rows.length).toBeGreaterThan(rowCount)
  const begun = process.cpuUsage()
  const { conclusion } = responseFindings(scores, 0, null)
  const { user, system } = process.cpuUsage(begun)
  expect(conclusion.rung).toBe('factor')
  expect((user + system) / 1e6).toBeLessThan(5)
}, 60_000)

// Two and a half million lines were cut into cells before the table was refused: 16 s of the processor, and more than 512 MB.
test.each([
  ['without quotes', (at: number) => `64,t${at % 9},5`],
  ['with quotes', (at: number) => `64,"t${at % 9}",5`],
])(
  'a table %s past half a million rows is refused as a whole, by that alone, and soon',
  (_, row) => {
    const rows = Array.from({ length: 510_000 }, (_, at) => row(at))
    const text = ['level,taster,liking', ...rows].join('\n')
    const begun = process.cpuUsage()
    const read = scoresOfCsv(text)
    const { user, system } = process.cpuUsage(begun)
    expect(read).toMatchObject({
      ok: false,
      troubles: [{ reason: 'too-many-rows', row: null, column: null }],
    })
    expect((user + system) / 1e6).toBeLessThan(6)
  },
  60_000,
)
