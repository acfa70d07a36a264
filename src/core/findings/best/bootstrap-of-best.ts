import { type Absent, absent, isPresent } from '@/core/findings/reason.ts'
import { drawsOfSeed } from '@/core/findings/rehearsal/draws-of-seed.ts'
import type { Bootstrap } from '@/core/findings/response-findings-shape.ts'
import { type Cells, cellsOf } from '@/core/findings/rungs/cells.ts'
import { comparableMeans } from '@/core/findings/rungs/comparable-means.ts'
import { levelRows } from '@/core/findings/rungs/rung-of.ts'
import { tasterMeans } from '@/core/findings/rungs/taster-means.ts'
import { levelValues } from '@/core/findings/rungs/trend-of.ts'
import { levelsPresent } from '@/core/findings/table/levels-present.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import type { LevelRows } from '@/core/statistics/block-model/rows.ts'
import {
  bootstrapLimits,
  startBootstrap,
  takeResamples,
} from '@/core/statistics/resampling/bootstrap-best.ts'
import { type CurveClusters, curveClusters } from '@/core/statistics/resampling/clusters.ts'
import { drawsIn } from '@/core/statistics/resampling/draw-clusters.ts'

export interface BootstrapOptions {
  seed: number
  resamples: number
  /** Called after each slice of draws with the share done; answering false stops the run. */
  onProgress?: (share: number) => boolean
}

const fewestTasters = 8
const fewestSessions = 2

/**
 * Percentile interval (95 %) of where the curve of the response at `index` turns, resampling whole tasters when there are
 * eight or more (their level means), else whole sessions (their unit means, within blocks), else not at all
 * (`too-few-clusters`); `tasters-not-shared` as for the factor's rung. The seed is kept with the answer; the same seed gives the same interval. A stopped run is `not-asked`.
 */
export function bootstrapOfBest(
  scores: ScoreTable,
  index: number,
  options: BootstrapOptions,
): Bootstrap | Absent {
  const drawn = clustersOf(scores, index)
  if (!isPresent(drawn)) return drawn
  const { clusters, over } = drawn
  const bootstrap = startBootstrap(clusters, options.resamples)
  const drawsOf = drawsOfSeed(options.seed, clusters.count)
  for (let slice = 0; bootstrap.drawn < options.resamples; slice += 1) {
    const left = options.resamples - bootstrap.drawn
    takeResamples(bootstrap, drawsOf(slice).subarray(0, left * drawsIn(clusters.count)))
    if (options.onProgress?.(bootstrap.drawn / options.resamples) === false) {
      return absent('not-asked')
    }
  }
  const limits = bootstrapLimits(bootstrap)
  if (!limits.ok) return absent(limits.reason)
  const { low, high, resamples } = limits
  return { low, high, resamples, seed: options.seed, over }
}

/** Why the best of the response at `index` could not be drawn again, known before any drawing; null where it can be tried. */
export function whyNotRedrawn(scores: ScoreTable, index: number): Absent | null {
  const drawn = clustersOf(scores, index)
  return isPresent(drawn) ? null : drawn
}

function clustersOf(
  scores: ScoreTable,
  index: number,
): { clusters: CurveClusters; over: Bootstrap['over'] } | Absent {
  if (!scores.factor.ordered) return absent('choice-factor')
  const cells = cellsOf(scores, index)
  if (cells.y.length === 0) return absent('no-scores')
  const over = cells.tasters.length >= fewestTasters ? 'tasters' : 'sessions'
  const drawn = over === 'tasters' ? byTaster(scores, cells) : bySession(scores, cells)
  if (!isPresent(drawn)) return drawn
  const clusters = curveClusters(drawn.rows, drawn.values, drawn.clusterOfBlock)
  if (clusters.ok) return { clusters, over }
  if (clusters.reason !== 'too-few-clusters') return absent(clusters.reason)
  const tasters = cells.tasters.length > 0 ? { tasters: fewestTasters } : {}
  return { reason: clusters.reason, ...tasters, sessions: fewestSessions }
}

interface Drawn {
  rows: LevelRows
  values: number[]
  clusterOfBlock: number[]
}

function byTaster(scores: ScoreTable, cells: Cells): Drawn {
  const filled = tasterMeans(cells, scores.levels.length).flatMap((row, taster) =>
    row.flatMap((mean, level) => (mean === null ? [] : [{ mean, taster, level }])),
  )
  const present = levelsPresent(
    scores,
    filled.map(({ level }) => level),
  )
  const data = { y: filled.map(({ mean }) => mean), block: filled.map(({ taster }) => taster) }
  const clusterOfBlock = cells.tasters.map((_, taster) => taster)
  return { rows: levelRows(data, present), values: levelValues(present), clusterOfBlock }
}

function bySession(scores: ScoreTable, cells: Cells): Drawn | Absent {
  const { unit } = scores
  const means = comparableMeans(cells, unit, unit === 'batch' ? 'session' : 'flight')
  if (!isPresent(means)) return means
  const present = levelsPresent(scores, means.level)
  const rows = levelRows(means, present)
  const clusterOfBlock: number[] = []
  for (const [u, session] of means.session.entries()) {
    clusterOfBlock[rows.block[u] as number] = session
  }
  return { rows, values: levelValues(present), clusterOfBlock }
}
