import type { TradeOff } from '@/core/findings/findings-document.ts'
import type { Absent } from '@/core/findings/reason.ts'
import { absent, isPresent } from '@/core/findings/reason.ts'
import type { ResponseFindings } from '@/core/findings/response-findings-shape.ts'
import type { ScoreResponse, ScoreTable } from '@/core/findings/table/score-table.ts'
import {
  type Desire,
  desirability,
  overallDesirability,
} from '@/core/statistics/description/desirability.ts'

/** A weight of 0 leaves a response out of the trade-off. */
export interface Weight {
  responseId: string
  weight: number
}

/**
 * Weighs the responses against each other for each level: desirability d of every part between 0 and 1, the overall
 * one their weighted geometric mean (Derringer and Suich 1980, J Qual Technol 12:214; from memory). A part rises linearly from the
 * worst to the best: over the scale for scores from 1 to 9 and 1 to 5, over the level means themselves for measurements; for a
 * target, from the farther end to the target; a measurement equal at all levels counts as fully desirable. Level means are plain means over rows. A response that is neither better high nor
 * low takes no part; weights are 1 unless given. Refuses `no-parts` when fewer than two responses take part.
 */
export function tradeOffOf(
  scores: ScoreTable,
  responses: readonly ResponseFindings[],
  weights: readonly Weight[] = [],
): TradeOff | Absent {
  const given = new Map(weights.map(({ responseId, weight }) => [responseId, weight]))
  const parts = scores.responses.flatMap((response, at) => {
    const weight = given.get(response.id) ?? 1
    const found = responses[at]
    if (response.better.is === 'neither' || !found || !(weight > 0)) return []
    const means = found.levels.map(({ mean }) => (isPresent(mean) ? mean : null))
    return [{ response, weight, means, desire: desireOf(response, means) }]
  })
  if (parts.length < 2) return absent('no-parts')
  return {
    weights: parts.map(({ response, weight }) => ({ responseId: response.id, weight })),
    levels: scores.levels.map(({ id }, level) => {
      const values = parts.map(({ means, desire }) => {
        const mean = means[level] ?? null
        if (mean === null) return null
        return desire ? desirability(mean, desire) : 1
      })
      const known = values.flatMap((value, at) =>
        value === null ? [] : [{ value, weight: parts[at]?.weight ?? 0 }],
      )
      return {
        level: id,
        overall: known.length === parts.length ? overallDesirability(known) : absent('no-scores'),
        parts: parts.map(({ response }, at) => ({
          responseId: response.id,
          desirability: values[at] ?? absent('no-scores'),
        })),
      }
    }),
  }
}

function desireOf(response: ScoreResponse, means: readonly (number | null)[]): Desire | null {
  const [low, high] = endsOf(
    response,
    means.filter((mean) => mean !== null),
  )
  const { better } = response
  if (better.is === 'target') {
    const reach = Math.max(Math.abs(low - better.at), Math.abs(high - better.at))
    if (!(reach > 0)) return null
    return {
      kind: 'target',
      low: better.at - reach,
      target: better.at,
      high: better.at + reach,
      bend: 1,
    }
  }
  if (!(low < high)) return null
  return better.is === 'lower'
    ? { kind: 'lower', perfect: low, worthless: high, bend: 1 }
    : { kind: 'higher', worthless: low, perfect: high, bend: 1 }
}

function endsOf(response: ScoreResponse, seen: readonly number[]): [number, number] {
  if (response.scale === 'nine-point') return [1, 9]
  if (response.scale === 'just-about-right') return [1, 5]
  return [Math.min(...seen), Math.max(...seen)]
}
