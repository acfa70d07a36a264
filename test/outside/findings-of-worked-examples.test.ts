import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { found, near, present, table } from './findings-of-values.ts'

function reference(name: string) {
  return JSON.parse(readFileSync(new URL(`./reference/${name}.json`, import.meta.url), 'utf8'))
}
const tests = reference('tests')
const dunnett = reference('dunnett')

type Contrast = {
  contrast: string
  estimate: number
  SE: number
  'lower.CL': number
  'upper.CL': number
  'p.value': number
}
type Marginal = { emmean: number; SE: number; 'lower.CL': number; 'upper.CL': number }

describe('round-first-base times (R: friedman.test; lm with emmeans)', () => {
  const columns: string[] = tests.friedman_rounding.columns
  const data: number[][] = tests.friedman_rounding.data
  const values = data.flatMap((row, taster) =>
    row.map((y, at) => ({ level: columns[at] ?? '', y, taster: `${taster}` })),
  )
  const response = found(table(values))

  it.each(['rows', 'pieces'] as const)('agrees in F, means and pairs at the %s rung', (name) => {
    const rung = present(response[name])
    const row = tests.rbd_rounding.anova[1]
    near([
      [rung.f, row['F.value']],
      [rung.p, row['Pr..F.']],
      [rung.residualSd ** 2, tests.rbd_rounding.anova[2]['Mean.Sq']],
    ])
    for (const [at, mean] of rung.means.entries()) {
      const wanted: Marginal = tests.rbd_rounding.means[at]
      near([
        [mean.estimate, wanted.emmean],
        [mean.se, wanted.SE],
        [mean.low, wanted['lower.CL']],
        [mean.high, wanted['upper.CL']],
      ])
    }
    for (const [at, pair] of rung.pairs.entries()) {
      const wanted: Contrast = tests.rbd_rounding.pairs[at]
      expect(wanted.contrast).toBe(`${pair.a} - ${pair.b}`)
      near(
        [
          [pair.difference, -wanted.estimate],
          [pair.se, wanted.SE],
        ],
        1e-9,
      )
      near(
        [
          [pair.low, -wanted['upper.CL']],
          [pair.high, -wanted['lower.CL']],
          [pair.p, wanted['p.value']],
        ],
        1e-6,
      )
    }
  })

  it('agrees in ranks', () => {
    const ranks = present(response.ranks)
    near([
      [ranks.chiSquare, tests.friedman_rounding.result.statistic],
      [ranks.p, tests.friedman_rounding.result.p],
      [ranks.kendallW, tests.friedman_rounding.kendall_W],
    ])
    expect(ranks.rankSums.map(({ sum }) => sum)).toEqual(tests.friedman_rounding.rank_sums)
    expect(ranks.leftOut).toBe(0)
  })
})

describe('penicillin yields in randomised blocks (Box, Hunter and Hunter; R: lm with emmeans)', () => {
  type Yield = { blend: string; trt: string; y: number }
  const data: Yield[] = tests.rbd_penicillin.data
  const rung = present(
    found(table(data.map(({ blend, trt, y }) => ({ level: trt, y, taster: blend })))).pieces,
  )

  it('agrees in F and pairs', () => {
    const row = tests.rbd_penicillin.anova[1]
    near([
      [rung.f, row['F.value']],
      [rung.p, row['Pr..F.']],
    ])
    for (const [at, pair] of rung.pairs.entries()) {
      const wanted: Contrast = tests.rbd_penicillin.pairs_tukey[at]
      expect(wanted.contrast).toBe(`${pair.a} - ${pair.b}`)
      near(
        [
          [pair.difference, -wanted.estimate],
          [pair.se, wanted.SE],
          [pair.p, wanted['p.value']],
        ],
        1e-6,
      )
    }
  })
})

describe('levels against a control in blocks (R: multcomp, Dunnett)', () => {
  type Row = { taster: string; lf: string; y: number }
  const data: Row[] = dunnett.example.data
  const values = data.map(({ taster, lf, y }) => ({ level: Number(lf), y, taster }))
  const response = found(table(values, Number(dunnett.example.control)))

  it('agrees to what its simulation allows', () => {
    const against = present(present(response.pieces).againstControl)
    expect(against.map(({ level }) => level)).toEqual(['68', '72', '76'])
    for (const [at, each] of against.entries()) {
      const wanted = dunnett.example.estimates[at]
      expect(each.method).toBe('exact')
      near([
        [each.difference, wanted.difference],
        [each.se, wanted.se],
      ])
      near(
        [
          [each.p, wanted.p],
          [each.low, wanted.low],
          [each.high, wanted.high],
        ],
        5e-3,
      )
      expect(Math.abs(each.p - wanted.p)).toBeLessThan(1e-4)
      expect(Math.abs(each.low - wanted.low)).toBeLessThan(1e-4)
    }
  })
})

describe('freshness beside the level (R: litter weights with one covariate, type II)', () => {
  type Litter = { dose: number; weight: number; gesttime: number }
  const data: Litter[] = tests.ancova_litter.data
  const wanted = tests.ancova_litter_one_covariate

  it('agrees in slope, F and means at equal minutes', () => {
    const values = data.map(({ dose, weight, gesttime }) => ({
      level: dose,
      y: weight,
      minutes: gesttime,
    }))
    const freshness = present(present(found(table(values)).rows).freshness)
    near([
      [freshness.slope, wanted.coef_gesttime],
      [freshness.f, wanted.type2[1]['F.value']],
      [freshness.p, wanted.type2[1]['Pr..F.']],
    ])
    for (const [at, mean] of freshness.means.entries()) {
      const adjusted: Marginal = wanted.adjusted_means[at]
      near([
        [mean.estimate, adjusted.emmean],
        [mean.se, adjusted.SE],
        [mean.low, adjusted['lower.CL']],
        [mean.high, adjusted['upper.CL']],
      ])
    }
    expect(freshness.separable).toBe(true)
  })
})

describe('curves and lines (R: lm on cars and mtcars)', () => {
  const curve = tests.vertex_mtcars
  const xy = ({ x, y }: { x: number[]; y: number[] }) =>
    x.map((level, at) => ({ level, y: y[at] ?? 0 }))

  it('agrees in the bend, the vertex, its delta and its Fieller limits', () => {
    const best = present(present(found(table(xy(curve))).rows).best)
    const fieller = present(best.fieller)
    const delta = present(best.delta)
    near([
      [best.linear, curve.coefficients[1]],
      [best.quadratic, curve.coefficients[2]],
      [present(best.vertex), curve.vertex],
      [delta.low, curve.delta_ci_t[0]],
      [delta.high, curve.delta_ci_t[1]],
      [fieller.low ?? 0, curve.fieller_ci[0]],
      [fieller.high ?? 0, curve.fieller_ci[1]],
    ])
    expect(fieller.kind).toBe('interval')
    // The curve has its lowest point at 253, inside 52 to 335.
    expect(best.answer).toBe('least-inside')
  })

  it('agrees in the slope and what the curve misses', () => {
    const cars = tests.linear_cars
    const rows = present(found(table(xy(cars))).rows)
    const trend = present(rows.trend)
    near([
      [trend.slope, cars.coefficients[1]],
      [trend.se, cars.se[1]],
      [trend.p, cars.p[1]],
      [trend.low, cars.ci[1][0]],
      [trend.high, cars.ci[1][1]],
    ])
    const lack = present(present(rows.best).lackOfFit)
    const wanted = tests.lack_of_fit_cars.quadratic
    expect([lack.df1, lack.df2]).toEqual(wanted.df)
    near([
      [lack.f, wanted.F],
      [lack.p, wanted.p],
    ])
    expect(present(rows.best).answer).toBe('past-high')
  })
})

describe("Page's L (cotton breaking strength)", () => {
  const rows: number[][] = tests.page_cotton.data_rows_are_blocks
  const values = rows.flatMap((row, taster) =>
    row.map((y, at) => ({ level: at + 1, y, taster: `${taster}` })),
  )

  it('agrees in L and its exact chance, one-sided where a rise was expected', () => {
    const page = present(present(found(table(values, undefined, 'rises')).ranks).page)
    expect(page).toMatchObject({ l: tests.page_cotton.L, method: 'exact', direction: 'rising' })
    near([[page.p, tests.page_cotton.p_increasing_exact]])
  })

  it('doubles it where nothing was expected', () => {
    const page = present(present(found(table(values)).ranks).page)
    expect(page).toMatchObject({ l: tests.page_cotton.L, direction: 'two-sided' })
    near([[page.p, 2 * tests.page_cotton.p_increasing_exact]])
  })
})
