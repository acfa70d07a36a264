import { describe, expect, test } from 'vitest'
import { allPairs } from '@/core/statistics/block-model/all-pairs.ts'
import { fitLevelsWithCovariates } from '@/core/statistics/block-model/level-fit.ts'
import { levelMeans } from '@/core/statistics/block-model/level-means.ts'
import { compareWithCovariate } from '@/core/statistics/block-model/with-covariate.ts'
import { coded } from '../../../outside/coded.ts'
import tests from '../../../outside/reference/tests.json'
import { relativeError } from '../../../outside/relative-error.ts'

// Litter weights by dose (Westfall), R 4.2.2 with car and emmeans: tests.json ancova_litter*.
const { data } = tests.ancova_litter
const dose = coded(data.map((row) => row.dose))
const rows = {
  y: data.map(({ weight }) => weight),
  level: dose.codes,
  block: data.map(() => 0),
  blockCount: 1,
  levelCount: 4,
}

test('one covariate', () => {
  const expected = tests.ancova_litter_one_covariate
  const found = compareWithCovariate(
    rows,
    data.map(({ gesttime }) => gesttime),
  )
  if (!found.ok) throw new Error(found.reason)
  expect(relativeError(found.slope, expected.coef_gesttime)).toBeLessThan(1e-10)
  expect(relativeError(found.slopeSe, expected.se)).toBeLessThan(1e-10)
  expect(relativeError(found.slopeP, expected.type2[0]?.['Pr..F.'] as number)).toBeLessThan(1e-9)
  expect(relativeError(found.levels.f, expected.type2[1]?.['F.value'] as number)).toBeLessThan(
    1e-10,
  )
  expect(relativeError(found.levels.p, expected.type2[1]?.['Pr..F.'] as number)).toBeLessThan(1e-9)
  for (const [i, mean] of levelMeans(found.levels).entries()) {
    const row = expected.adjusted_means[i]
    expect(relativeError(mean.estimate, row?.emmean as number)).toBeLessThan(1e-10)
    expect(relativeError(mean.se, row?.SE as number)).toBeLessThan(1e-10)
    expect(relativeError(mean.low, row?.['lower.CL'] as number)).toBeLessThan(1e-10)
  }
})

test('two covariates with Tukey’s pairs', () => {
  const expected = tests.ancova_litter
  const fit = fitLevelsWithCovariates(rows, [
    data.map(({ gesttime }) => gesttime),
    data.map(({ number }) => number),
  ])
  if (!fit.ok) throw new Error(fit.reason)
  expect(relativeError(fit.f, expected.type2[2]?.['F.value'] as number)).toBeLessThan(1e-10)
  for (const [i, mean] of levelMeans(fit).entries()) {
    const row = expected.adjusted_means[i]
    expect(relativeError(mean.estimate, row?.emmean as number)).toBeLessThan(1e-10)
    expect(relativeError(mean.se, row?.SE as number)).toBeLessThan(1e-10)
  }
  for (const [i, pair] of allPairs(fit).entries()) {
    const row = expected.pairs_tukey[i]
    expect(relativeError(pair.difference, -(row?.estimate as number))).toBeLessThan(1e-10)
    expect(relativeError(pair.p, row?.['p.value'] as number)).toBeLessThan(1e-6)
    expect(pair.high).toBeCloseTo(-(row?.['lower.CL'] as number), 6)
  }
})

describe('widening', () => {
  const levels = [0, 1, 0, 1, 0, 1]
  const block = [0, 0, 1, 1, 2, 2]
  const y = [4, 6, 5, 6.5, 3, 5.5]
  const table = { y, block, level: levels, blockCount: 3, levelCount: 2 }

  test('is 1 when the covariate is balanced over the levels', () => {
    // Within blocks the covariate goes +1, −1, 0 against the level: its product with it sums to 0.
    const found = compareWithCovariate(table, [0, 1, 1, 0, 2, 2])
    if (!found.ok) throw new Error(found.reason)
    expect(found.widening).toBeCloseTo(1, 12)
  })

  test('worked by hand where it leans on the level', () => {
    // Differences of the covariate within blocks: 1, 1, 3. Var of the level difference with the covariate over without:
    // 1/(1 − r²) with r² = (Σd)²/(n·Σd²) = 25/(3·11); widening = √(33/8) = 2.0310.
    const found = compareWithCovariate(table, [0, 1, 0, 1, 0, 3])
    if (!found.ok) throw new Error(found.reason)
    expect(found.widening).toBeCloseTo(Math.sqrt(33 / 8), 10)
  })

  test('a covariate that follows the level, or the blocks, has no slope', () => {
    expect(compareWithCovariate(table, [0, 2, 0, 2, 0, 2])).toEqual({
      ok: false,
      reason: 'covariate-not-separable',
    })
    expect(compareWithCovariate(table, [7, 7, 3, 3, 5, 5])).toEqual({
      ok: false,
      reason: 'covariate-not-separable',
    })
  })
})
