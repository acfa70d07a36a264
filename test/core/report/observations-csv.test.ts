import Papa from 'papaparse'
import { expect, test } from 'vitest'
import { observationsCsv } from '@/core/report/observations-csv.ts'
import { wholeTrialOf } from '../../whole-trial-of.ts'
import { bakeClubScores } from './bake-club-scores.ts'

const whole = wholeTrialOf()

test('a row is one piece before one taster, a column a response; lines end with CRLF (RFC 4180)', () => {
  const scores = bakeClubScores()
  const text = observationsCsv(whole, scores)
  const { data, meta, errors } = Papa.parse<Record<string, string>>(text.trim(), { header: true })
  expect(errors).toEqual([])
  expect(meta.fields).toEqual([
    'session',
    'flight',
    'batch',
    'piece',
    'level',
    'taster',
    'position',
    'minutes',
    'Liking',
    'Crispness',
  ])
  expect(data).toHaveLength(scores.rows.length)
  expect(data.map((row) => Number(row.Liking))).toEqual(scores.rows.map((row) => row.values[0]))
  expect(text.split('\r\n')).toHaveLength(scores.rows.length + 2)
  expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/)
})

test('a cell that a spreadsheet would run is defused, a negative number stays a number', () => {
  const scores = bakeClubScores()
  scores.levels = scores.levels.map((level, index) => ({
    ...level,
    name: index === 0 ? '=1+1' : '@x',
  }))
  const [first, second] = scores.rows
  if (!first || !second) throw new Error('there are rows')
  scores.rows = [
    { ...first, values: [-2.5, null] },
    { ...second, level: 1 },
  ]
  const text = observationsCsv(whole, scores)
  expect(text).toContain(`,"'=1+1",`)
  expect(text).toContain(`,"'@x",`)
  expect(text).toContain(',-2.5,')
})
