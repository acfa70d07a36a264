import { allPairs, type PairOfLevels } from '@/core/statistics/block-model/all-pairs.ts'
import { gatherCells } from '@/core/statistics/block-model/cells.ts'
import { fitLevelCells, fitLevels, type LevelFit } from '@/core/statistics/block-model/level-fit.ts'
import { type LevelMean, levelMeans } from '@/core/statistics/block-model/level-means.ts'
import { type CurvePoint, curveAt } from '@/core/statistics/curve/curve-at.ts'
import { fitPolynomial } from '@/core/statistics/curve/polynomial-fit.ts'
import { type Slope, slopeOf } from '@/core/statistics/curve/slope.ts'
import { type Vertex, vertexOf } from '@/core/statistics/curve/vertex.ts'
import { fTails } from '@/core/statistics/distributions/f.ts'
import { type Answer, refuse } from '@/core/statistics/reason.ts'

/** Unit means of several trials: each with its trial, its session within that trial, and its level in the common list. */
export interface PooledRows {
  y: readonly number[]
  trial: readonly number[]
  session: readonly number[]
  level: readonly number[]
  trialCount: number
  levelCount: number
}

/** Do the trials agree? F of trial × level after sessions and levels. */
export type Heterogeneity = { f: number; df1: number; df2: number; p: number }

export interface PooledModel {
  /** Level after blocks, each session of each trial a block of its own; refused where no chain of sessions compares all levels. */
  levels: Answer<{
    f: number
    df1: number
    df2: number
    p: number
    residualSd: number
    means: LevelMean[]
    pairs: PairOfLevels[]
  }>
  heterogeneity: Answer<Heterogeneity>
  slope: Answer<Slope>
  best: Answer<Vertex>
  /** The fitted height with plain 95 % limits along the levels: the parabola from three levels on, else the line. */
  curve: Answer<{ points: CurvePoint[] }>
}

/**
 * One model of several trials: y ~ trial:session + factor(level), on unit means. Heterogeneity compares it with every trial
 * fitted for itself: F = ((RSS − ΣRSSᵢ)/(df − Σdfᵢ)) / (ΣRSSᵢ/Σdfᵢ); refused where the trials leave no degree of freedom of
 * their own, such as with one session each. `levelValues` gives each level's value for the line and the curve; null for a choice.
 */
export function pooledModel(rows: PooledRows, levelValues: readonly number[] | null): PooledModel {
  const blocks = blockCodes(rows)
  const data = {
    y: rows.y,
    block: blocks.codes,
    level: rows.level,
    blockCount: blocks.count,
    levelCount: rows.levelCount,
  }
  const cells = gatherCells(data)
  const fit = fitLevelCells(cells)
  const line = levelValues ? fitPolynomial(cells, levelValues, 1) : null
  const curve = levelValues ? fitPolynomial(cells, levelValues, 2) : null
  return {
    levels: fit.ok ? levelsOf(fit) : fit,
    heterogeneity: fit.ok ? heterogeneityOf(rows, fit) : fit,
    slope: line === null ? refuse('one-level') : line.ok ? { ok: true, ...slopeOf(line) } : line,
    best: curve === null ? refuse('one-level') : curve.ok ? vertexOf(curve) : curve,
    curve: drawnCurve(line, curve, levelValues ?? []),
  }
}

const curvePoints = 41

function drawnCurve(
  line: ReturnType<typeof fitPolynomial> | null,
  curve: ReturnType<typeof fitPolynomial> | null,
  values: readonly number[],
): PooledModel['curve'] {
  const fit = curve?.ok ? curve : line
  if (fit === null || !fit.ok) return fit ?? refuse('one-level')
  const low = Math.min(...values)
  const span = Math.max(...values) - low
  const at = Array.from(
    { length: curvePoints },
    (_, step) => low + (span * step) / (curvePoints - 1),
  )
  return { ok: true, points: curveAt(fit, at) }
}

function levelsOf(fit: LevelFit) {
  const { f, df1, df2, p, residualSd } = fit
  return {
    ok: true as const,
    f,
    df1,
    df2,
    p,
    residualSd,
    means: levelMeans(fit),
    pairs: allPairs(fit),
  }
}

function blockCodes({ trial, session }: PooledRows): { codes: number[]; count: number } {
  const known = new Map<string, number>()
  const codes = trial.map((code, at) => {
    const key = `${code} ${session[at]}`
    const block = known.get(key) ?? known.size
    known.set(key, block)
    return block
  })
  return { codes, count: Math.max(1, known.size) }
}

function heterogeneityOf(rows: PooledRows, pooled: LevelFit): Answer<Heterogeneity> {
  let apart = 0
  let df2 = 0
  for (let trial = 0; trial < rows.trialCount; trial += 1) {
    const own = oneTrial(rows, trial)
    const fit = fitLevels(own)
    if (fit.ok) {
      apart += fit.residualSd ** 2 * fit.df2
      df2 += fit.df2
    } else if (fit.reason === 'levels-not-connected') return fit
  }
  const df1 = pooled.df2 - df2
  if (df2 === 0 || df1 === 0) return refuse('no-residual-df')
  const together = pooled.residualSd ** 2 * pooled.df2
  const f = (together - apart) / df1 / (apart / df2)
  return { ok: true, f, df1, df2, p: fTails(f, df1, df2).upper }
}

function oneTrial({ y, trial, session, level }: PooledRows, wanted: number) {
  const at = trial.flatMap((code, row) => (code === wanted ? [row] : []))
  const pick = (values: readonly number[]) => at.map((row) => values[row] as number)
  const recoded = (codes: number[]) => {
    const known = [...new Set(codes)]
    return { codes: codes.map((code) => known.indexOf(code)), count: known.length }
  }
  const [sessions, levels] = [recoded(pick(session)), recoded(pick(level))]
  return {
    y: pick(y),
    block: sessions.codes,
    level: levels.codes,
    blockCount: Math.max(1, sessions.count),
    levelCount: levels.count,
  }
}
