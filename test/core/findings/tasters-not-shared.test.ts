import { expect, it } from 'vitest'
import { findings } from '@/core/findings/findings.ts'
import { madeUpRows, tableOf } from './score-tables.ts'

it('neither compares batches nor draws a best when tasters and batches of one session fall apart', () => {
  // Two pairs of tasters never meet over a batch: one pair has the two lower levels, the other the two higher.
  const rows = madeUpRows({ seed: 5, levels: [60, 64, 68, 72], tasters: 4, sessions: 3 }).filter(
    ({ level, taster }) => Number(level) < 66 === (taster === 't0' || taster === 't1'),
  )
  const [found] = findings(tableOf(rows), { seed: 1, resamples: 100 }).responses
  expect(found?.factor).toEqual({ reason: 'tasters-not-shared' })
  expect(found?.bootstrap).toEqual({ reason: 'tasters-not-shared' })
  expect(found?.pieces).toEqual({ reason: 'levels-not-connected' })
})

it('takes a panel of hundreds, each new and each with a few batches, in its stride', () => {
  const rows = madeUpRows({ seed: 6, levels: [60, 64, 68, 72], tasters: 400, sessions: 2 })
    .filter((_, at) => at % 3 > 0)
    .map((row) => ({ ...row, taster: `${row.session} ${row.taster}` }))
  const [found] = findings(tableOf(rows), { seed: 1, resamples: 10 }).responses
  expect(found?.agreement).toHaveLength(800)
  expect(found?.factor).toMatchObject({ df1: 3, df2: 3 })
})
