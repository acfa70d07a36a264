import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import { gatherCells } from '@/core/statistics/block-model/cells.ts'
import { fitLevels } from '@/core/statistics/block-model/level-fit.ts'
import { fitPolynomial } from '@/core/statistics/curve/polynomial-fit.ts'
import type { Answer } from '@/core/statistics/reason.ts'
import { startBootstrap, takeResamples } from '@/core/statistics/resampling/bootstrap-best.ts'
import { curveClusters } from '@/core/statistics/resampling/clusters.ts'

/**
 * What the examples in the comments of the statistics may speak of besides plain numbers: a table of two sessions (blocks)
 * by three levels at 0, 1 and 2, worked by hand.
 *
 *            0  1  2   mean
 * session 1  1  2  6    3
 * session 2  3  6  6    5
 * mean       2  4  6    4
 *
 * Residuals are 0 -1 1 and 0 1 -1: sum of squares 4 on 2 degrees of freedom, residual SD √2. The means lie on a line.
 * `hump` has 1 5 3 and 3 7 3: means 2, 6, 3, whose parabola is 2 + 7.5 L - 3.5 L², with its top at 7.5 / 7.
 */
const codes = { block: [0, 0, 0, 1, 1, 1], level: [0, 1, 2, 0, 1, 2], blockCount: 2, levelCount: 3 }
const values = [0, 1, 2]
const rows = { y: [1, 2, 6, 3, 6, 6], ...codes }
const hump = { y: [1, 5, 3, 3, 7, 3], ...codes }
const cells = gatherCells(rows)
const fit = answered(fitLevels(rows))
const line = answered(fitPolynomial(cells, values, 1))
const curve = answered(fitPolynomial(gatherCells(hump), values, 2))
const clusters = answered(curveClusters(hump, values, [0, 1]))
/** Both sessions drawn once each, as the pair numbered 2 · (1 + 0) + 1, twice over. */
const bootstrap = startBootstrap(clusters, 2)
takeResamples(bootstrap, Int32Array.of(3, 3))
/** Draws that count for nothing: of one cluster there is one choice. */
const random = xoroshiro128plus(1)
/** Two tasters, each with one score of each of two pieces a level: codes for the scatter of scores. */
const scatter = {
  y: [1, 2, 3, 4, 2, 3, 4, 5],
  taster: [0, 0, 0, 0, 1, 1, 1, 1],
  level: [0, 0, 1, 1, 0, 0, 1, 1],
  flight: [0, 0, 0, 0, 0, 0, 0, 0],
  batch: [0, 0, 1, 1, 0, 0, 1, 1],
  piece: [0, 1, 2, 3, 0, 1, 2, 3],
}

function answered<Found>(answer: Answer<Found>): Found {
  if (!answer.ok) throw new Error(answer.reason)
  return answer
}

export const worked = {
  ...{ rows, hump, cells, fit, line, curve, clusters, bootstrap, random, scatter, values },
}
