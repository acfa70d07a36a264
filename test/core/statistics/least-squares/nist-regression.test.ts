import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { blockedLeastSquares } from '@/core/statistics/least-squares/blocked-least-squares.ts'
import { averageBlockValue, columnsValue } from '@/core/statistics/least-squares/combination.ts'
import agreement from '../../../outside/reference/nist/r-agreement.json'
import { relativeError } from '../../../outside/relative-error.ts'

type Regression = {
  x: number[] | number[][]
  y: number[]
  certified: {
    estimates: number[]
    standard_deviations: number[]
    residual_sd: number
    residual_df: number
  }
}

const read = (name: string): Regression =>
  JSON.parse(
    readFileSync(new URL(`../../../outside/reference/nist/${name}.json`, import.meta.url), 'utf8'),
  )

/** Log relative error; log absolute error where the certified value is 0, as NIST counts. */
const digits = (found: number, certified: number) => {
  const error = certified === 0 ? Math.abs(found) : relativeError(found, certified)
  return -Math.log10(Math.max(error, 1e-16))
}

/** Centre and half-range of each column, all of them columns of their own or powers of one. */
function scaled(values: readonly number[]) {
  const low = Math.min(...values)
  const high = Math.max(...values)
  const [centre, half] = [low + (high - low) / 2, (high - low) / 2]
  return { centre, half, column: Float64Array.from(values, (value) => (value - centre) / half) }
}

function fitOf(y: readonly number[], columns: readonly Float64Array[]) {
  const result = blockedLeastSquares(
    {
      y: Float64Array.from(y),
      block: new Int32Array(y.length),
      blockCount: 1,
      weight: new Float64Array(y.length).fill(1),
    },
    columns,
  )
  if (!result.ok) throw new Error(`column ${result.dependent} depends on those before it`)
  return result.fit
}

/** Estimates with standard deviations as linear combinations of the constant at x = 0 and the scaled coefficients. */
function inRaw(name: string) {
  const { x, y, certified } = read(name)
  const n = certified.estimates.length
  const table = x.map((row) => (Array.isArray(row) ? row : [row]))
  const polynomial = table[0]?.length === 1
  const bases = polynomial
    ? [scaled(table.map((row) => row[0] as number))]
    : Array.from({ length: n - 1 }, (_, j) => scaled(table.map((row) => row[j] as number)))
  const [first] = bases
  if (!first) throw new Error('no column')
  const columns = polynomial
    ? Array.from({ length: n - 1 }, (_, j) => first.column.map((value) => value ** (j + 1)))
    : bases.map(({ column }) => column)
  const fit = fitOf(y, columns)
  const sd = Math.sqrt(fit.residualSumOfSquares / certified.residual_df)
  const rows = polynomial ? powersInRaw(n, first.centre, first.half) : slopesInRaw(n, bases)
  const results = rows.map((row, i) =>
    i === 0 ? averageBlockValue(fit, row.slice(1)) : columnsValue(fit, row.slice(1)),
  )
  const estimates = results.map(({ estimate }, i) =>
    digits(estimate, certified.estimates[i] as number),
  )
  const errors = results.map(({ unscaledVariance }, i) =>
    digits(sd * Math.sqrt(unscaledVariance), certified.standard_deviations[i] as number),
  )
  return {
    estimates: Math.min(...estimates),
    errors: Math.min(...errors),
    residual: digits(sd, certified.residual_sd),
  }
}

/** ((L − m)/s)^j by powers of L: row i holds the share of the j-th scaled coefficient in the i-th raw one. */
function powersInRaw(n: number, centre: number, half: number): number[][] {
  return Array.from({ length: n }, (_, i) =>
    Array.from({ length: n }, (_, j) =>
      j < i ? 0 : (binomial(j, i) * (-centre) ** (j - i)) / half ** j,
    ),
  )
}

function slopesInRaw(n: number, bases: readonly { centre: number; half: number }[]): number[][] {
  return Array.from({ length: n }, (_, i) =>
    Array.from({ length: n }, (_, j) => {
      const base = bases[j - 1]
      if (!base) return i === 0 ? 1 : 0
      if (i === 0) return -base.centre / base.half
      return i === j ? 1 / base.half : 0
    }),
  )
}

function binomial(n: number, k: number): number {
  let value = 1
  for (let i = 1; i <= k; i += 1) value = (value * (n - k + i)) / i
  return value
}

/**
 * Digits that agree with NIST's certified values. NoInt1 is left out: every model of methods.md has blocks or a constant.
 * Asked is what R's lm reaches less three quarters of a digit, at most 12; with PRINT_DIGITS set the digits reached are printed.
 */
describe('NIST linear regression', () => {
  test.each([
    'Norris',
    'Pontius',
    'Longley',
    'Wampler1',
    'Wampler2',
    'Wampler3',
    'Wampler4',
    'Wampler5',
    'Filip',
  ] as const)('%s', (name) => {
    const found = inRaw(name)
    const inR = agreement[name]
    if (process.env.PRINT_DIGITS) console.log(name, JSON.stringify(found), JSON.stringify(inR))
    expect(found.estimates).toBeGreaterThan(Math.min(12, inR.min_digits_estimates - 0.75))
    expect(found.errors).toBeGreaterThan(Math.min(12, inR.min_digits_sd - 0.75))
    expect(found.residual).toBeGreaterThan(Math.min(12, inR.digits_residual_sd - 0.75))
  })
})

test('a column that follows from those before it is named, not turned into noise', () => {
  const a = Float64Array.of(1, 2, 3, 4, 5)
  const b = a.map((value) => 3 * value - 7)
  const rows = {
    y: Float64Array.of(1, 3, 2, 5, 4),
    block: new Int32Array(5),
    blockCount: 1,
    weight: new Float64Array(5).fill(1),
  }
  expect(blockedLeastSquares(rows, [a, b])).toEqual({ ok: false, dependent: 1 })
  expect(blockedLeastSquares(rows, [new Float64Array(5).fill(8)])).toEqual({
    ok: false,
    dependent: 0,
  })
})
