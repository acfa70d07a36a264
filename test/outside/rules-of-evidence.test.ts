import { describe, expect, it } from 'vitest'
import { commonSpread } from '@/core/design/spread.ts'
import { allowanceOf } from '@/core/findings/evidence/allowance.ts'
import { asGood } from '@/core/findings/evidence/as-good.ts'
import { bestPlace } from '@/core/findings/evidence/best-place.ts'
import { primaryQuestion } from '@/core/findings/evidence/primary-question.ts'
import { tooSmall } from '@/core/findings/evidence/too-small.ts'
import { controlLoadings } from '@/core/statistics/block-model/against-control.ts'
import { allPairs } from '@/core/statistics/block-model/all-pairs.ts'
import {
  bendWeights,
  levelContrast,
  lineWeights,
} from '@/core/statistics/block-model/level-contrast.ts'
import { levelDifference } from '@/core/statistics/block-model/level-difference.ts'
import { fitLevels, type LevelFit } from '@/core/statistics/block-model/level-fit.ts'
import { levelMeans } from '@/core/statistics/block-model/level-means.ts'
import { dunnettUpperQuantile } from '@/core/statistics/distributions/dunnett.ts'
import {
  evenLoadings,
  oneSidedDunnettQuantile,
} from '@/core/statistics/distributions/one-sided-dunnett.ts'
import { tTwoSidedP } from '@/core/statistics/distributions/students-t.ts'
import { lookLevel } from '@/core/statistics/looks/look-level.ts'
import { bakeBaseRate } from '@/core/statistics/power/bake-base-rate.ts'
import { chanceAsGood } from '@/core/statistics/power/chance-as-good.ts'
import looks from './reference/early-looks.json'
import reference from './reference/rules-of-evidence.json'

// biome-ignore lint/suspicious/noExplicitAny: every example has its own data and answer
type Example = { id: string; data: any; answer: any }
const example = (id: string): Example => {
  const found = (reference.examples as Example[]).find((one) => one.id === id)
  if (!found) throw new Error(`no example ${id}`)
  return found
}

function fitOf(rows: readonly (readonly number[])[]): LevelFit {
  const levelCount = rows[0]?.length ?? 0
  const fit = fitLevels({
    y: rows.flat(),
    block: rows.flatMap((row, session) => row.map(() => session)),
    level: rows.flatMap((row) => row.map((_, level) => level)),
    blockCount: rows.length,
    levelCount,
  })
  if (!fit.ok) throw new Error(fit.reason)
  return fit
}

function near(got: number, wanted: number, digits = 1e-8): void {
  expect(Math.abs(got - wanted)).toBeLessThan(digits * Math.max(1, Math.abs(wanted)))
}

describe('constants of the rules of evidence', () => {
  it('one-sided d for one control among equal levels', () => {
    for (const [alpha, byK] of Object.entries(reference.constants.one_sided_d)) {
      const upper = Number(alpha.replace('alpha=', ''))
      for (const [k, byDf] of Object.entries(byK))
        for (const [df, wanted] of Object.entries(byDf))
          near(oneSidedDunnettQuantile(upper, evenLoadings(Number(k)), Number(df)), wanted, 1e-7)
    }
  })

  it('the larger of two independent t', () => {
    for (const [df, wanted] of Object.entries(reference.constants.line_or_bend_05))
      near(dunnettUpperQuantile(0.05, [0, 0], Number(df)), wanted, 1e-7)
  })

  it('p that a look needs, to the digits of its constant', () => {
    for (const [levels, byMost] of Object.entries(looks.early_strict))
      for (const [most, { look_sessions, nominal_p }] of Object.entries(byMost)) {
        if (most === '2') continue
        for (const [at, done] of look_sessions.entries())
          near(
            lookLevel(0.05, { levels: Number(levels), most: Number(most), done }),
            nominal_p[at] as number,
            // C is kept to four decimals: up to 5e-5 · 2φ(z) · √(most/done) in p.
            1e-5,
          )
      }
  })
})

describe('the primary question', () => {
  it.each(['R1a', 'R1b', 'R1c', 'R1d'])('%s', (id) => {
    const { data, answer } = example(id)
    const values: number[] = data.levels
    const fit = fitOf(data.unit_means_rows_sessions)
    for (const [at, { estimate }] of levelMeans(fit).entries())
      near(estimate, answer.level_means[at])
    near(fit.residualSd ** 2, answer.mse)
    const line = levelContrast(fit, lineWeights(values))
    near(line.estimate, answer.slope)
    near(line.se, answer.slope_se)
    near(tTwoSidedP(line.t, line.df), answer.slope_p)
    const bend = levelContrast(fit, bendWeights(values))
    near(bend.t, answer.bend_t, 1e-7)
    near(tTwoSidedP(bend.t, bend.df), answer.bend_p)
    const pairs = allPairs(fit)
    for (const { a, b, p, difference } of pairs) {
      const wanted = answer.pairs[`${values[b]}-${values[a]}`]
      near(difference, wanted.diff)
      near(p, wanted.p_tukey, 1e-6)
    }
    const direction = { rise: 'rises', hump: 'best-inside', none: null } as const
    const expected = direction[data.expectation as 'rise' | 'hump' | 'none']
    const { shown } = primaryQuestion({
      fit,
      levelIds: values.map(String),
      values,
      pairs,
      usual: null,
      margin: null,
      asked: {
        question: expected === null ? 'line-or-bend' : expected === 'rises' ? 'line' : 'bend',
        expected,
      },
      allowance: allowanceOf(values.length, data.unit_means_rows_sessions.length, {
        most: null,
        early: false,
      }),
    })
    const isLine = shown.find((one) => one.is === 'line')
    const isBend = shown.find((one) => one.is === 'bend')
    expect(isLine !== undefined).toBe(answer.shown.line)
    expect(isBend !== undefined).toBe(answer.shown.bend)
    if (isLine && answer.shown.ends !== undefined)
      expect(isLine.size !== null).toBe(answer.shown.ends)
    if (isBend && answer.shown.inside !== undefined) expect(isBend.inside).toBe(answer.shown.inside)
  })
})

describe('too small to matter', () => {
  it.each(['R2a', 'R2b'])('%s', (id) => {
    const { data, answer } = example(id)
    const fit = fitOf(data.unit_means_rows_sessions)
    const names = data.unit_means_rows_sessions[0].map((_: number, at: number) => at)
    const found = tooSmall(fit, names, data.M, data.usual_index, 0.05)
    near(levelDifference(fit, 0, 1).se, answer.se_diff)
    near(found.largest, answer.largest_diff)
    expect(found.allPairs).toBe(answer.all_pairs_too_small)
    expect(found.usual?.within).toBe(answer.none_more_than_M_from_usual)
  })
})

describe('as good as the best', () => {
  it.each(['R3a', 'R3b'])('%s', (id) => {
    const { data, answer } = example(id)
    const fit = fitOf(data.unit_means_rows_sessions)
    const stepped = asGood(fit, 1, data.M, null, 0.05)
    const passing = stepped.flatMap(({ passes }, at) => (passes ? [at] : []))
    expect(passing).toEqual(answer.stepdown_pass)
    for (const [at, { short }] of stepped.entries())
      near((short + data.M) / levelDifference(fit, 0, 1).se, answer.T[at])
    const named = asGood(fit, 1, data.M, data.named_before, 0.05)
    expect(named[data.named_before]?.passes).toBe(answer.named_pass)
    expect(named.filter(({ passes }) => passes)).toHaveLength(answer.named_pass ? 1 : 0)
  })

  it('R3c: unequal numbers, d of the comparator as control', () => {
    const { data, answer } = example('R3c')
    // Independent means of n rows each with the residual spread that is printed: rows at mean ± s.
    const level = (data.n as number[]).flatMap((n, at) => Array.from({ length: n }, () => at))
    const spread = Math.sqrt(data.mse * 14)
    const shifts = new Map<number, number[]>()
    let left = 14
    const y: number[] = []
    for (const [at, n] of (data.n as number[]).entries()) {
      const share = Math.sqrt((n - 1) / 14)
      const shift = (spread * share) / Math.SQRT2
      shifts.set(at, [shift, -shift, ...Array.from({ length: n - 2 }, () => 0)])
      left -= n - 1
    }
    expect(left).toBe(0)
    for (const [at, list] of shifts) y.push(...list.map((shift) => data.means[at] + shift))
    const fit = fitLevels({ y, block: y.map(() => 0), level, blockCount: 1, levelCount: 4 })
    if (!fit.ok) throw new Error(fit.reason)
    near(fit.residualSd ** 2, data.mse)
    for (let j = 0; j < 4; j += 1) {
      const { loadings } = controlLoadings(fit, j)
      for (const [i, wanted] of answer.lambda_for_control_j[j].entries())
        near(loadings[i] as number, wanted, 1e-6)
      near(oneSidedDunnettQuantile(0.05, loadings, fit.df2), answer.d_j[j], 1e-6)
    }
    const found = asGood(fit, 1, data.M, null, 0.05)
    expect(found.map(({ passes }) => passes)).toEqual(answer.passes)
    for (const [at, { low }] of found.entries()) near(low, answer.mcb_lower[at], 1e-6)
  })

  it.each(['R3d', 'R3e'])('%s: the chance before the mix', (id) => {
    const { data, answer } = example(id)
    const { t, J, S, f, M } = data
    const { batch, piece, residual } = commonSpread
    const meanSd = Math.sqrt((batch ** 2 + piece ** 2 / f + residual ** 2 / (J * f)) / S)
    near(meanSd, answer.sd_level_mean)
    const design = { levels: t, meanSd, df: (t - 1) * (S - 1), margin: M }
    near(chanceAsGood({ ...design, named: true }), answer.named_all_equal, 1e-7)
    near(chanceAsGood({ ...design, named: true, equal: 2 }), answer.named_top_two, 1e-7)
    near(chanceAsGood({ ...design, named: false }), answer.unnamed_all_equal_lower_bound, 1e-7)
    near(chanceAsGood({ ...design, named: false, equal: 2 }), answer.unnamed_top_two, 1e-7)
  })
})

describe('where the best lies', () => {
  it.each(['R7a', 'R7b'])('%s', (id) => {
    const { data, answer } = example(id)
    const fit = fitOf(data.unit_means_rows_sessions)
    const found = bestPlace(fit, data.levels, 1, 0.05, false)
    expect(found.candidates.map((at) => data.levels[at])).toEqual(answer.candidates)
    expect([found.low, found.high]).toEqual(answer.interval)
    expect({ low: found.openLow, high: found.openHigh }).toEqual(answer.end_open)
  })
})

it('R8a: a look after 3 of 5 sessions', () => {
  const { data, answer } = example('R8a')
  const fit = fitOf(data.unit_means_rows_sessions)
  const line = levelContrast(fit, lineWeights([60, 64, 68, 72]))
  near(line.t, answer.t)
  const p = tTwoSidedP(line.t, line.df)
  near(p, answer.p)
  const needed = allowanceOf(4, 3, { most: 5, early: true }).all
  near(needed, answer.needed_p, 1e-5)
  expect(p <= needed).toBe(answer.shown)
})

it.each(['R9a', 'R9b'])('%s: how often pieces are called different for no reason', (id) => {
  const { data, answer } = example(id)
  const { t, J, S, f } = data
  const { batch, piece, residual, tasterLevel } = commonSpread
  const found = bakeBaseRate({
    levels: t,
    tasters: J,
    sessions: S,
    pieces: S * f,
    batchVariance: batch ** 2,
    pieceVariance: piece ** 2,
    tasterLevelVariance: tasterLevel ** 2,
    residualVariance: residual ** 2,
  })
  near(found.rate, answer.rate)
  near(found.share, answer.share_of_level_spread_from_bakes)
})
