import { discriminationsOf } from '@/core/findings/judged/discriminations-of.ts'
import { foundRankings } from '@/core/findings/judged/found-rankings.ts'
import { tradeOffOf, type Weight } from '@/core/findings/judged/trade-off.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import type { FindingsDocument } from './findings-document.ts'
import { responseFindings } from './response-findings.ts'

export interface FindingsOptions {
  /** Where the bootstrap's draws start from; kept in the answer. */
  seed: number
  /** How many resamples; null or 0 leaves the bootstrap out. */
  resamples: number | null
  /** Weights of the trade-off by response id; 1 each unless given. */
  weights?: readonly Weight[]
}

/** All findings of a table of scores, the main response first, as the machine-readable document. */
export function findings(scores: ScoreTable, options: FindingsOptions): FindingsDocument {
  const { seed, resamples } = options
  const bootstrap = resamples ? { seed, resamples } : null
  const responses = scores.responses.map((_, index) => responseFindings(scores, index, bootstrap))
  return {
    format: 'evenhand-findings',
    version: 3,
    factor: scores.factor,
    unit: scores.unit,
    levels: scores.levels.map(({ id, name, control }) => ({ id, name, control })),
    responses,
    discrimination: discriminationsOf(scores.tellApart),
    ...(scores.rankings?.length ? { rankings: foundRankings(scores) } : {}),
    tradeOff: tradeOffOf(scores, responses, options.weights),
  }
}
