import { describe, expect, test } from 'vitest'
import { type Cells, gatherCells } from '@/core/statistics/block-model/cells.ts'
import { fitLevelCells } from '@/core/statistics/block-model/level-fit.ts'
import { curveAt } from '@/core/statistics/curve/curve-at.ts'
import { lackOfFit } from '@/core/statistics/curve/lack-of-fit.ts'
import { fitPolynomial, type PolynomialFit } from '@/core/statistics/curve/polynomial-fit.ts'
import { slopeOf } from '@/core/statistics/curve/slope.ts'
import { vertexOf } from '@/core/statistics/curve/vertex.ts'
import tests from '../../../outside/reference/tests.json'
import { relativeError } from '../../../outside/relative-error.ts'

function cellsOf(x: readonly number[], y: readonly number[]): { cells: Cells; values: number[] } {
  const values = [...new Set(x)].sort((a, b) => a - b)
  const cells = gatherCells({
    y,
    level: x.map((value) => values.indexOf(value)),
    block: x.map(() => 0),
    blockCount: 1,
    levelCount: values.length,
  })
  return { cells, values }
}

function polynomial(x: readonly number[], y: readonly number[], degree: 1 | 2): PolynomialFit {
  const { cells, values } = cellsOf(x, y)
  const fit = fitPolynomial(cells, values, degree)
  if (!fit.ok) throw new Error(fit.reason)
  return fit
}

type Expected = {
  coefficients: number[]
  se: number[]
  sigma: number
  df: number
  bands: { x: number; 'conf.fit': number; 'conf.lwr': number; 'conf.upr': number }[]
}

function agrees(fit: PolynomialFit, expected: Expected) {
  for (const [i, coefficient] of fit.raw.coefficients.entries()) {
    expect(relativeError(coefficient, expected.coefficients[i] as number)).toBeLessThan(1e-10)
    expect(relativeError(fit.raw.se[i] as number, expected.se[i] as number)).toBeLessThan(1e-10)
  }
  expect(relativeError(fit.residual.sd, expected.sigma)).toBeLessThan(1e-10)
  expect(fit.residual.df).toBe(expected.df)
  for (const band of expected.bands) {
    const at = curveAt(fit, [band.x])[0]
    expect(relativeError(at?.estimate as number, band['conf.fit'])).toBeLessThan(1e-10)
    expect(relativeError(at?.low as number, band['conf.lwr'])).toBeLessThan(1e-10)
    expect(relativeError(at?.high as number, band['conf.upr'])).toBeLessThan(1e-10)
  }
}

describe('lines and curves against R', () => {
  test('a line: stopping distances', () => {
    const expected = tests.linear_cars
    const fit = polynomial(expected.x, expected.y, 1)
    agrees(fit, expected)
    const slope = slopeOf(fit)
    expect(relativeError(slope.p, expected.p[1] as number)).toBeLessThan(1e-9)
    expect(relativeError(slope.low, expected.ci[1]?.[0] as number)).toBeLessThan(1e-10)
    expect(relativeError(slope.high, expected.ci[1]?.[1] as number)).toBeLessThan(1e-10)
  })

  test('a curve: heights and weights', () => {
    agrees(polynomial(tests.quadratic_women.x, tests.quadratic_women.y, 2), tests.quadratic_women)
  })

  test('a curve with its vertex, delta interval and Fieller set: mpg on hp', () => {
    const expected = tests.vertex_mtcars
    const fit = polynomial(expected.x, expected.y, 2)
    agrees(fit, expected)
    const found = vertexOf(fit)
    if (!found.ok) throw new Error(found.reason)
    expect(relativeError(found.vertex, expected.vertex)).toBeLessThan(1e-10)
    expect(found.isTop).toBe(false)
    expect(relativeError(found.delta.se, expected.delta_se_car)).toBeLessThan(1e-9)
    expect(relativeError(found.delta.low, expected.delta_ci_t[0] as number)).toBeLessThan(1e-9)
    expect(relativeError(found.delta.high, expected.delta_ci_t[1] as number)).toBeLessThan(1e-9)
    expect(found.fieller.kind).toBe('interval')
    expect(
      relativeError(found.fieller.low as number, expected.fieller_ci[0] as number),
    ).toBeLessThan(1e-9)
    expect(
      relativeError(found.fieller.high as number, expected.fieller_ci[1] as number),
    ).toBeLessThan(1e-9)
  })

  test('lack of fit', () => {
    const cars = tests.linear_cars
    const vitaminC = tests.lack_of_fit_toothgrowth_VC
    for (const { x, y, degree, expected } of [
      { x: cars.x, y: cars.y, degree: 1 as const, expected: tests.lack_of_fit_cars.linear },
      { x: cars.x, y: cars.y, degree: 2 as const, expected: tests.lack_of_fit_cars.quadratic },
      { x: vitaminC.x, y: vitaminC.y, degree: 1 as const, expected: vitaminC.linear },
    ]) {
      const { cells } = cellsOf(x, y)
      const levels = fitLevelCells(cells)
      if (!levels.ok) throw new Error(levels.reason)
      const found = lackOfFit(polynomial(x, y, degree), levels)
      if (!found.ok) throw new Error(found.reason)
      expect([found.df1, found.df2]).toEqual(expected.df)
      expect(relativeError(found.f, expected.F)).toBeLessThan(1e-9)
      expect(relativeError(found.p, expected.p)).toBeLessThan(1e-9)
    }
  })
})

describe('awkward curves', () => {
  const three = { x: [60, 65, 70, 60, 65, 70], y: [1, 4, 2, 2, 5, 3.5] }

  test('three levels leave no lack of fit', () => {
    const { cells } = cellsOf(three.x, three.y)
    const levels = fitLevelCells(cells)
    if (!levels.ok) throw new Error(levels.reason)
    expect(lackOfFit(polynomial(three.x, three.y, 2), levels)).toEqual({
      ok: false,
      reason: 'no-lack-of-fit-df',
    })
  })

  test('two levels bear no curve, one no line', () => {
    const two = cellsOf([1, 2, 1, 2], [1, 3, 2, 5])
    expect(fitPolynomial(two.cells, two.values, 2)).toEqual({
      ok: false,
      reason: 'needs-three-levels',
    })
    const one = cellsOf([1, 1], [1, 3])
    expect(fitPolynomial(one.cells, one.values, 1)).toEqual({ ok: false, reason: 'one-level' })
  })

  test('levels that never meet in a block have no slope', () => {
    const cells = gatherCells({
      y: [1, 2, 3, 4],
      block: [0, 0, 1, 1],
      level: [0, 0, 1, 1],
      blockCount: 2,
      levelCount: 2,
    })
    expect(fitPolynomial(cells, [60, 70], 1)).toEqual({ ok: false, reason: 'level-values-equal' })
  })

  test('a straight line has no vertex', () => {
    // ±1 around a line in a way that the curve cannot see: each level has one above and one below.
    const x = [1, 2, 3, 4, 1, 2, 3, 4]
    const y = x.map((value, i) => 2 * value + (i < 4 ? 1 : -1))
    expect(vertexOf(polynomial(x, y, 2))).toEqual({ ok: false, reason: 'no-curvature' })
  })

  test('a curve with blocks: the blocks do not bend it', () => {
    // y = block + 9 − (L − 3)²/4: vertex 3, c = −1/4. Blocks 0 and 1 carry the same noise with opposite signs, which no
    // block and no polynomial can pick up; blocks 2 and 3 lack the lowest level.
    const values = [1, 2, 4, 5]
    const noise = [0.1, -0.3, 0.3, -0.2]
    const blocks = [
      { lift: 0, sign: 1, levels: [0, 1, 2, 3] },
      { lift: 0.5, sign: -1, levels: [0, 1, 2, 3] },
      { lift: 10, sign: 0, levels: [1, 2, 3] },
      { lift: 9, sign: 0, levels: [1, 2, 3] },
    ]
    const rows = blocks.flatMap(({ lift, sign, levels }, block) =>
      levels.map((level) => {
        const value = values[level] as number
        const y = lift + sign * (noise[level] as number) + 9 - (value - 3) ** 2 / 4
        return { block, level, y }
      }),
    )
    const cells = gatherCells({
      y: rows.map(({ y }) => y),
      block: rows.map(({ block }) => block),
      level: rows.map(({ level }) => level),
      blockCount: 4,
      levelCount: 4,
    })
    const fit = fitPolynomial(cells, values, 2)
    if (!fit.ok) throw new Error(fit.reason)
    expect(fit.raw.coefficients[2]).toBeCloseTo(-0.25, 12)
    const found = vertexOf(fit)
    if (!found.ok) throw new Error(found.reason)
    expect(found).toMatchObject({ vertex: expect.closeTo(3, 12), isTop: true })
    // Residual: twice the noise's squares, 2·(0.01 + 0.09 + 0.09 + 0.04) less its own mean twice, 2·4·0.025² = 0.455.
    expect(fit.residual.sumOfSquares).toBeCloseTo(0.46 - 0.005, 12)
    expect(fit.residual.df).toBe(14 - 4 - 2)
    // The constant is that of the average block: 9 + (0.025·(1 − 1) + 0 + 0.5 + 10 + 9)/4 at L = 3.
    expect(curveAt(fit, [3])[0]?.estimate).toBeCloseTo(9 + 19.5 / 4, 12)
  })
})
