import { describe, expect, it } from 'vitest'
import * as z from 'zod/mini'
import { findings } from '@/core/findings/findings.ts'
import { findingsDocumentShape } from '@/core/findings/findings-document.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { madeUpRows, tableOf } from './score-tables.ts'

/** Every number in a document is a number that can be written down. */
function unwritable(value: unknown, path = '$'): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} is ${value}`]
  if (value === undefined) return [`${path} is missing`]
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, each]) => unwritable(each, `${path}.${key}`))
}

const levels = [60, 64, 68, 72]
const full = madeUpRows({ seed: 1, levels, tasters: 6, sessions: 3, flights: 2 })
const one = { seed: 2, levels, tasters: 6, sessions: 1 }

const cases: [string, () => ScoreTable][] = [
  ['a whole trial', () => tableOf(full)],
  ['a whole trial of pieces', () => tableOf(full, { unit: 'piece' })],
  ['a control and a margin', () => tableOf(full, { control: 64, margin: 1 })],
  ['a margin too fine', () => tableOf(full, { margin: 0.0001 })],
  ['missing cells', () => tableOf(full.filter((_, at) => at % 7 !== 0))],
  ['unequal numbers', () => tableOf(full.filter((row, at) => row.level !== 60 || at % 3 === 0))],
  [
    'a blank level',
    () => tableOf(full.map((row) => (row.level === 64 ? { ...row, liking: null } : row))),
  ],
  [
    'a control without scores',
    () =>
      tableOf(
        full.map((row) => (row.level === 64 ? { ...row, liking: null } : row)),
        { control: 64 },
      ),
  ],
  ['ties', () => tableOf(madeUpRows({ ...one, round: true }))],
  ['one taster', () => tableOf(madeUpRows({ ...one, tasters: 1, sessions: 2 }))],
  ['one taster, one session', () => tableOf(madeUpRows({ ...one, tasters: 1 }))],
  ['one session', () => tableOf(madeUpRows(one))],
  ['one session of two flights', () => tableOf(madeUpRows({ ...one, flights: 2 }))],
  ['two levels', () => tableOf(madeUpRows({ ...one, levels: [60, 70], sessions: 3 }))],
  [
    'two levels, two tasters, one session',
    () => tableOf(madeUpRows({ ...one, levels: [60, 70], tasters: 2 })),
  ],
  ['one level', () => tableOf(madeUpRows({ ...one, levels: [60] }))],
  ['one row', () => tableOf([{ level: 60, liking: 5 }])],
  [
    'no score at all',
    () => ({
      ...tableOf(full),
      rows: tableOf(full).rows.map((row) => ({ ...row, values: [null] })),
    }),
  ],
  [
    'a choice',
    () => tableOf(madeUpRows({ ...one, levels: ['stone', 'steel', 'tray'], sessions: 2 })),
  ],
  ['all scores equal', () => tableOf(full.map((row) => ({ ...row, liking: 5 })))],
  [
    'zero variance, no spread inside levels',
    () => tableOf(full.map((row) => ({ ...row, liking: Number(row.level) / 10 }))),
  ],
  [
    'zero variance, bent',
    () => tableOf(full.map((row) => ({ ...row, liking: (Number(row.level) - 66) ** 2 / 10 }))),
  ],
  [
    'two that agree on everything',
    () =>
      tableOf(
        madeUpRows({ ...one, tasters: 2 }).map((row) => ({
          ...row,
          liking: row.level === 60 ? 4 : 6,
        })),
      ),
  ],
  [
    'levels unequally spaced, negative, zero and decimal',
    () => tableOf(madeUpRows({ ...one, levels: [-5, 0, 0.5, 12.25], sessions: 2 })),
  ],
  [
    'levels a thousandth apart',
    () => tableOf(madeUpRows({ ...one, levels: [64.001, 64.002, 64.003], sessions: 2 })),
  ],
  [
    'huge levels',
    () => tableOf(madeUpRows({ ...one, levels: [900_001, 900_002, 900_003], sessions: 2 })),
  ],
  [
    'tasters new each session',
    () => tableOf(full.map((row) => ({ ...row, taster: `${row.session}${row.taster}` }))),
  ],
  [
    'tasters who split a session',
    () =>
      tableOf(
        full.filter(
          (row) => (row.taster === 't0' || row.taster === 't1') === Number(row.level) < 66,
        ),
      ),
  ],
  [
    'tasters who scored one level each',
    () => tableOf(full.filter((row) => row.taster === `t${levels.indexOf(Number(row.level))}`)),
  ],
  [
    'no tasters',
    () => tableOf(full.filter(({ taster }) => taster === 't0').map(({ taster: _, ...row }) => row)),
  ],
  [
    'minutes that follow the level',
    () => tableOf(full.map((row) => ({ ...row, minutes: Number(row.level) / 10 }))),
  ],
  ['minutes all alike', () => tableOf(full.map((row) => ({ ...row, minutes: 5 })))],
  [
    'minutes for some',
    () => tableOf(full.map((row, at) => (at % 2 ? { ...row, minutes: null } : row))),
  ],
  [
    'minutes for one',
    () => tableOf(full.map((row, at) => (at > 0 ? { ...row, minutes: null } : row))),
  ],
  ['eight tasters', () => tableOf(madeUpRows({ ...one, tasters: 8 }))],
  [
    'two responses, one mostly blank',
    () => tableOf(full.map((row, at) => ({ ...row, crunch: at < 2 ? at : null }))),
  ],
  [
    'a straight line without error beside a scale far from zero',
    () => tableOf(full.map((row) => ({ ...row, liking: 1e6 + Number(row.level) }))),
  ],
]

describe('awkward trials', () => {
  it.each(cases)('%s: every answer is a number or a reason', (_, make) => {
    const document = findings(make(), { seed: 7, resamples: 200 })
    expect(unwritable(document)).toEqual([])
    expect(z.safeParse(findingsDocumentShape, document).error?.issues ?? []).toEqual([])
    expect(JSON.parse(JSON.stringify(document))).toEqual(document)
  })

  const reasons: [string, string, string][] = [
    ['one taster', 'pieces', 'needs-two-tasters'],
    ['one session', 'factor', 'needs-two-blocks'],
    ['one session', 'doughs', 'one-flight'],
    ['a whole trial', 'doughs', 'several-sessions'],
    ['all scores equal', 'rows', 'all-equal'],
    ['zero variance, no spread inside levels', 'rows', 'no-residual-variance'],
    ['one level', 'rows', 'one-level'],
    ['no score at all', 'rows', 'no-scores'],
    ['tasters who split a session', 'factor', 'tasters-not-shared'],
    ['no tasters', 'ranks', 'needs-two-tasters'],
    ['a choice', 'bootstrap', 'choice-factor'],
    ['one session', 'bootstrap', 'too-few-clusters'],
  ]
  it.each(reasons)('%s: %s says %s', (name, part, reason) => {
    const make = cases.find(([each]) => each === name)?.[1]
    const found = make && findings(make(), { seed: 7, resamples: 200 }).responses[0]
    expect(found).toHaveProperty([part, 'reason'], reason)
  })

  it.each([
    ['a choice', 'rows.trend', 'choice-factor'],
    ['a choice', 'rows.best', 'choice-factor'],
    ['a choice', 'ranks.page', 'choice-factor'],
    ['two levels', 'rows.best', 'needs-three-levels'],
    ['a whole trial', 'conclusion.asGood', 'no-margin'],
    ['a whole trial', 'rows.againstControl', 'no-control'],
    ['a control without scores', 'rows.againstControl', 'no-control'],
    ['minutes that follow the level', 'rows.freshness', 'covariate-not-separable'],
    ['a whole trial', 'rows.best.asHandled', 'not-logged'],
    ['levels a thousandth apart', 'rows.best.lackOfFit', 'no-lack-of-fit-df'],
  ])('%s: %s says %s', (name, part, reason) => {
    const make = cases.find(([each]) => each === name)?.[1]
    const found = make && findings(make(), { seed: 7, resamples: null }).responses[0]
    expect(found).toHaveProperty(`${part}.reason`, reason)
  })
})
