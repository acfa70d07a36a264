import { describe, expect, it } from 'vitest'
import { findings } from '@/core/findings/findings.ts'
import { tradeOffOf } from '@/core/findings/judged/trade-off.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { tableOf } from '../score-tables.ts'

describe('the trade-off', () => {
  const rows = [60, 70].flatMap((level) =>
    ['a', 'b'].map((taster) => ({ level, taster, crisp: level / 10, soft: 9 - level / 10 })),
  )
  const scores = tableOf(rows)
  const { responses } = findings(scores, { seed: 1, resamples: null })

  it('is 0 where a part is at its worst, and follows the weights', () => {
    const both = tradeOffOf(scores, responses)
    expect(both).toMatchObject({
      levels: [
        { level: '60', overall: 0 },
        { level: '70', overall: 0 },
      ],
    })
    const nine: ScoreTable = {
      ...scores,
      responses: scores.responses.map((response) => ({ ...response, scale: 'nine-point' })),
    }
    // On 1 to 9: crisp 6 and 7 give 5/8 and 6/8, soft 3 and 2 give 2/8 and 1/8; weights 3 and 1.
    const weighed = tradeOffOf(nine, responses, [{ responseId: 'crisp', weight: 3 }])
    if ('reason' in weighed) throw new Error(weighed.reason)
    expect(weighed.levels[0]?.overall).toBeCloseTo((0.625 ** 3 * 0.25) ** 0.25, 12)
    expect(weighed.levels[1]?.overall).toBeCloseTo((0.75 ** 3 * 0.125) ** 0.25, 12)
  })

  it('has no answer for one response alone', () => {
    expect(tradeOffOf(scores, responses, [{ responseId: 'soft', weight: 0 }])).toEqual({
      reason: 'no-parts',
    })
  })
})
