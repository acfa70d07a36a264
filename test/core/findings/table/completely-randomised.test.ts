import { expect, test } from 'vitest'
import { findings } from '@/core/findings/findings.ts'
import { scoresOfCsv } from '@/core/findings/table/scores-of-csv.ts'
import { headline } from '@/core/wording/findings/headline.ts'
import { restsOn } from '@/core/wording/findings/rests-on.ts'
import tests from '../../../outside/reference/tests.json'

// R's own one-way example, `anova(lm(weight ~ group, PlantGrowth))` (Dobson 1983): F = 4.8461 with 2 and 27 degrees of
// freedom, p = 0.01591, residual mean square 0.38860 (R 4, from memory but for the mean square, which is kept beside the
// tests). By hand: group sums 50.32, 46.61, 55.26 and total 152.19, so between = (50.32² + 46.61² + 55.26²)/10 - 152.19²/30
// = 775.82621 - 772.05987 = 3.76634 and F = 1.88317/0.388596 = 4.8461.
const groups = {
  ctrl: [4.17, 5.58, 5.18, 6.11, 4.5, 4.61, 5.17, 4.53, 5.33, 5.14],
  trt1: [4.81, 4.17, 4.41, 3.59, 5.87, 3.83, 6.03, 4.89, 4.32, 4.69],
  trt2: [6.31, 5.12, 5.54, 5.5, 5.37, 5.29, 4.92, 6.15, 5.8, 5.26],
}
const rows = Object.entries(groups).flatMap(([group, weights]) =>
  weights.map((weight, at) => `${group},${at + 1},${weight}`),
)

test('a completely randomised table of three groups of ten gives R’s one-way analysis', () => {
  const read = scoresOfCsv(['group,plant,weight', ...rows].join('\n'), {
    as: [
      { role: 'level', column: 'group' },
      { role: 'replicate', column: 'plant' },
    ],
  })
  if (!read.ok) throw new Error(JSON.stringify(read.troubles))
  const [found] = findings(read.scores, { seed: 1, resamples: null }).responses
  const factor = found?.factor
  if (!factor || !('f' in factor)) throw new Error('no test of the factor')
  expect([factor.df1, factor.df2]).toEqual([2, 27])
  expect(factor.f).toBeCloseTo(3.76634 / 2 / tests.fieller_ratio_plantgrowth.pooled_variance, 4)
  expect(factor.f).toBeCloseTo(4.8461, 4)
  expect(factor.p).toBeCloseTo(0.01591, 5)
})

test('is spoken of by how often each level was made, never as one session', () => {
  // The same numbers dealt over the groups without order: nothing is shown.
  const dealt = ['a', 'b', 'c'].flatMap((group, at) =>
    [4.1, 5.9, 5.2, 4.6, 6.1].map((weight, plant) => `${group},${plant + 1},${weight + 0.01 * at}`),
  )
  const read = scoresOfCsv(['group,plant,weight', ...dealt].join('\n'), {
    as: [
      { role: 'level', column: 'group' },
      { role: 'replicate', column: 'plant' },
    ],
  })
  if (!read.ok) throw new Error(JSON.stringify(read.troubles))
  const document = findings(read.scores, { seed: 1, resamples: null })
  const [found] = document.responses
  if (!found) throw new Error('no response')
  const { factor, unit, levels } = document
  expect(found.conclusion.repeats).toBe(5)
  expect(headline(found, { factor, unit, levels, scale: 'measured' }).shown).toMatch(
    /^Not settled: with 5 of each level only a difference of two levels of about/,
  )
  const rests = restsOn(read.scores, found, 0).join(' ')
  expect(rests).not.toContain('session')
  expect(rests).toContain('made again in no block')
})
