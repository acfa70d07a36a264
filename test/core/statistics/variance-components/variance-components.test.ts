import { describe, expect, test } from 'vitest'
import { chanceFrom } from '@/core/design/chance.ts'
import { normalDraws } from '@/core/findings/rehearsal/normal-draws.ts'
import {
  type ScatterRows,
  scatterSums,
} from '@/core/statistics/variance-components/scatter-sums.ts'
import { varianceComponents } from '@/core/statistics/variance-components/variance-components.ts'

interface Size {
  tasters: number
  levels: number
  sessions: number
  flights: number
}

/** Codes of a full table, levels fastest, then flights, sessions, tasters; some rows left out by their index. */
function table({ tasters, levels, sessions, flights }: Size, without: readonly number[] = []) {
  const rows: Record<Exclude<keyof ScatterRows, 'y'>, number[]> = {
    ...{ taster: [], level: [], flight: [], batch: [], piece: [] },
  }
  let index = 0
  for (let taster = 0; taster < tasters; taster += 1)
    for (let session = 0; session < sessions; session += 1)
      for (let each = 0; each < flights; each += 1)
        for (let level = 0; level < levels; level += 1) {
          index += 1
          if (without.includes(index - 1)) continue
          const flight = session * flights + each
          rows.taster.push(taster)
          rows.level.push(level)
          rows.flight.push(flight)
          rows.batch.push(session * levels + level)
          rows.piece.push(flight * levels + level)
        }
  return rows
}

describe('a table worked by hand', () => {
  // Two tasters, two levels, two sessions of two flights. The second level less the first, A: 4 2 | 3 1, B: 2 0 | -1 -1.
  // Everything about levels is half the squares of those differences about their means. Means: A 2.5, B 0, flights 3 1 1 0,
  // sessions 2 and 0.5, all 1.25. Taster by level: 4 (1.25² + 1.25²)/2 = 6.25, df 1. Batch: 4 (0.75² + 0.75²)/2 = 2.25, df 1.
  // Piece: 2 (1² + 1² + 0.5² + 0.5²)/2 = 2.5, df 2. Residual: 2 (3 · 0.25² + 0.75²)/2 = 0.75, df 3.
  const low = [5, 6, 4, 6, 3, 4, 5, 2]
  const apart = [4, 2, 3, 1, 2, 0, -1, -1]
  const y = low.flatMap((value, index) => [value, value + (apart[index] as number)])
  const sums = scatterSums({
    y,
    ...table({ tasters: 2, levels: 2, sessions: 2, flights: 2 }),
  })

  test('sums of squares and degrees of freedom', () => {
    expect(sums.tasterLevel.squares).toBeCloseTo(6.25, 10)
    expect(sums.batch.squares).toBeCloseTo(2.25, 10)
    expect(sums.piece.squares).toBeCloseTo(2.5, 10)
    expect(sums.residual.squares).toBeCloseTo(0.75, 10)
    expect([sums.tasterLevel.df, sums.batch.df, sums.piece.df, sums.residual.df]).toEqual([
      1, 1, 2, 3,
    ])
  })

  // Mean squares 0.25, 6.25, 1.25, 2.25 against σr², σr² + 4 σtl², σr² + 2 σp², σr² + 2 σp² + 4 σb².
  test('components', () => {
    const found = varianceComponents([sums])
    expect(found.residual).toMatchObject({ ok: true, df: 3 })
    expect(found.residual.ok && found.residual.variance).toBeCloseTo(0.25, 10)
    expect(found.tasterLevel.ok && found.tasterLevel.variance).toBeCloseTo(1.5, 10)
    expect(found.piece.ok && found.piece.variance).toBeCloseTo(0.5, 10)
    expect(found.batch.ok && found.batch.variance).toBeCloseTo(0.25, 10)
  })

  test('the same table twice gives the same components on twice the degrees of freedom', () => {
    const found = varianceComponents([sums, sums])
    expect(found.batch.ok && found.batch.variance).toBeCloseTo(0.25, 10)
    expect(found.residual).toMatchObject({ df: 6 })
  })

  test('a taster who is harsher in one flight changes nothing', () => {
    const harsh = y.map((value, row) => (row === 4 || row === 5 ? value - 3 : value))
    const again = scatterSums({
      y: harsh,
      ...table({ tasters: 2, levels: 2, sessions: 2, flights: 2 }),
    })
    expect(again.residual.squares).toBeCloseTo(0.75, 10)
    expect(again.tasterLevel.squares).toBeCloseTo(6.25, 10)
  })
})

// R 4.2.2: anova(lm(y ~ t:fl + l + fl:l + t:l)) for taster by level, anova(lm(y ~ t:fl + l + t:l + s:l + fl:l)) for the others.
test('sums of squares of an unbalanced table are those of R', () => {
  const full = [
    5, 7, 6, 6, 7, 4, 5, 8, 6, 7, 6, 5, 4, 6, 7, 5, 6, 6, 3, 7, 5, 5, 5, 6, 6, 8, 5, 7, 9, 4, 6, 7,
    3, 8, 8, 5,
  ]
  const without = [1, 13, 14, 30]
  const y = full.filter((_, index) => !without.includes(index))
  const rows = table({ tasters: 3, levels: 3, sessions: 2, flights: 2 }, without)
  const { residual, tasterLevel, piece, batch } = scatterSums({ y, ...rows })
  expect(tasterLevel.squares).toBeCloseTo(13.9075425791, 9)
  expect(batch.squares).toBeCloseTo(0.275, 9)
  expect(piece.squares).toBeCloseTo(12.0630981346, 9)
  expect(residual.squares).toBeCloseTo(1.8702351987, 9)
  expect([tasterLevel.df, batch.df, piece.df, residual.df]).toEqual([4, 2, 4, 8])
})

// Known components 1.44, 0.36, 0.36, 0.16 and a level effect, 160 unbalanced tables with a tenth of the scores missing: the
// estimates are unbiased, so their mean lies within four of its own standard errors of the truth.
test('means over simulated tables are the components they were made with', {
  timeout: 30_000,
}, () => {
  const truth = { residual: 1.44, tasterLevel: 0.36, piece: 0.36, batch: 0.16 }
  const chance = chanceFrom(20261125)
  const size = { tasters: 5, levels: 4, sessions: 3, flights: 2 }
  const next = normalDraws(chance)
  const seen: Record<keyof typeof truth, number[]> = {
    ...{ residual: [], tasterLevel: [], piece: [], batch: [] },
  }
  for (let round = 0; round < 160; round += 1) {
    const missing = Array.from({ length: 12 }, (_, index) => (index * 10 + round) % 120)
    const rows = table(size, missing)
    const effects = (count: number, variance: number) =>
      Array.from({ length: count }, () => Math.sqrt(variance) * next())
    const taste = effects(size.tasters * size.levels, truth.tasterLevel)
    const pieces = effects(24, truth.piece)
    const batches = effects(12, truth.batch)
    const moods = effects(size.tasters * 6, 2)
    const y = rows.taster.map((taster, row) => {
      const level = rows.level[row] as number
      const flight = rows.flight[row] as number
      return (
        5 +
        0.8 * level +
        (moods[taster * 6 + flight] as number) +
        (taste[taster * size.levels + level] as number) +
        (pieces[rows.piece[row] as number] as number) +
        (batches[rows.batch[row] as number] as number) +
        Math.sqrt(truth.residual) * next()
      )
    })
    const found = varianceComponents([scatterSums({ y, ...rows })])
    for (const key of Object.keys(truth) as (keyof typeof truth)[]) {
      const component = found[key]
      if (!component.ok) throw new Error(`${key} has no answer`)
      seen[key].push(component.unbiased)
    }
  }
  for (const key of Object.keys(truth) as (keyof typeof truth)[]) {
    const values = seen[key]
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length
    const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0)
    const error = Math.sqrt(squares / (values.length - 1) / values.length)
    expect(Math.abs(mean - truth[key]), key).toBeLessThan(4 * error)
    expect(error, key).toBeLessThan(0.05)
  }
})

describe('what cannot be told apart', () => {
  const scored = (size: Size) => {
    const rows = table(size)
    const y = rows.taster.map((_, row) => (row * 7) % 9)
    return varianceComponents([scatterSums({ y, ...rows })])
  }

  test('one flight in all leaves nothing to repeat', () => {
    const found = scored({ tasters: 4, levels: 3, sessions: 1, flights: 1 })
    expect(Object.values(found).map((one) => one.ok)).toEqual([false, false, false, false])
  })

  test('one session knows pieces but no doughs', () => {
    const found = scored({ tasters: 4, levels: 3, sessions: 1, flights: 2 })
    expect(found.piece.ok).toBe(true)
    expect(found.batch).toEqual({ ok: false, reason: 'no-residual-df' })
  })

  test('one flight a session cannot tell doughs from pieces', () => {
    const found = scored({ tasters: 4, levels: 3, sessions: 3, flights: 1 })
    expect(found.tasterLevel.ok).toBe(true)
    expect(found.piece.ok).toBe(false)
    expect(found.batch.ok).toBe(false)
  })

  test('a negative estimate stands as it is beside the 0 that counts', () => {
    const rows = table({ tasters: 2, levels: 2, sessions: 1, flights: 2 })
    // Differences A 2, -2, B -2, 2: all of it residual, 4 · 2²/2 on 1 degree of freedom; piece (0 - 8)/2.
    const apart = [2, -2, -2, 2]
    const y = apart.flatMap((difference) => [5, 5 + difference])
    const found = varianceComponents([scatterSums({ y, ...rows })])
    expect(found.residual.ok && found.residual.variance).toBeCloseTo(8, 10)
    expect(found.piece.ok && found.piece.unbiased).toBeCloseTo(-4, 10)
    expect(found.piece.ok && found.piece.variance).toBe(0)
  })

  test('an answer that is no number is a mistake of the program', () => {
    const rows = table({ tasters: 2, levels: 2, sessions: 1, flights: 1 })
    expect(() => scatterSums({ y: [1, 2, Number.NaN, 4], ...rows })).toThrow(RangeError)
  })
})
