import { describe, expect, it } from 'vitest'
import { isPresent } from '@/core/findings/reason.ts'
import { responseFindings } from '@/core/findings/response-findings.ts'
import type { ScoreRow, ScoreTable } from '@/core/findings/table/score-table.ts'
import reference from './reference/rules-of-evidence.json'

// biome-ignore lint/suspicious/noExplicitAny: every example has its own data and answer
type Example = { id: string; data: any; answer: any }
const example = (id: string): Example => {
  const found = (reference.examples as Example[]).find((one) => one.id === id)
  if (!found) throw new Error(`no example ${id}`)
  return found
}

function near(got: number, wanted: number): void {
  expect(Math.abs(got - wanted)).toBeLessThan(1e-8 * Math.max(1, Math.abs(wanted)))
}

/** A table of cells by session, flight (or none), taster and level; null cells are left out. */
function table(
  cells: {
    session: number
    flight?: number
    taster: number | null
    level: number
    y: number | null
    minutes?: number
  }[],
  unit: 'batch' | 'piece' = 'batch',
): ScoreTable {
  const levels = 1 + Math.max(...cells.map(({ level }) => level))
  const rows = cells.map(({ session, flight = 0, taster, level, y, minutes }): ScoreRow => {
    const batch = unit === 'batch' ? `${session} ${level}` : `${session}`
    return {
      ...{ session: `${session}`, flight: `${session} ${flight}`, batch, level },
      piece: `${session} ${flight} ${level}`,
      taster: taster === null ? null : `t${taster}`,
      ...{ position: null, minutes: minutes ?? null, handled: null, values: [y] },
    }
  })
  return {
    factor: { kind: 'own', name: 'x', unitOfMeasure: '', ordered: true, splitsAt: null },
    unit,
    levels: Array.from({ length: levels }, (_, at) => ({
      ...{ id: `${at}`, name: at, value: at, label: `${at}`, control: false },
    })),
    responses: [
      {
        ...{ id: 'y', name: 'y', scale: 'measured' },
        ...{ better: { is: 'higher' }, margin: null, failures: 0 },
      },
    ],
    ...{ rows, expectation: null, tellApart: [], ease: null },
  }
}

function found(scores: ScoreTable) {
  return responseFindings(scores, 0, null)
}
function present<Answer>(answer: Answer) {
  if (!isPresent(answer)) throw new Error(JSON.stringify(answer))
  return answer
}

describe('freshness at the rung that answers', () => {
  it('R4a: unit means ~ block + minutes + level', () => {
    const { data, answer } = example('R4a')
    const rows: number[][] = data.unit_means_rows_sessions
    const cells = rows.flatMap((row, session) =>
      row.map((y, level) => ({
        ...{ session, taster: null, level, y },
        minutes: data.minutes[session][level],
      })),
    )
    const beside = present(present(found(table(cells)).conclusion.freshness).answer)
    near(beside.slope, answer.slope_per_min)
    near(beside.low, answer.ci95[0])
    near(beside.high, answer.ci95[1])
    near(beside.f, answer.level_F)
    near(beside.p, answer.level_p)
    near(beside.widening, answer.widening)
    expect([beside.df1, beside.df2]).toEqual(answer.level_df)
    for (const [at, { estimate }] of beside.means.entries())
      near(estimate, answer.means_at_mean_minutes[at])
  })

  it('R4b: minutes differ by taster within a unit', () => {
    const { data, answer } = example('R4b')
    const scores: number[][][] = data.scores_session_taster_level
    const cells = scores.flatMap((bySession, session) =>
      bySession.flatMap((row, taster) =>
        row.map((y, level) => ({
          ...{ session, taster, level, y },
          minutes: data.minutes[session][taster][level],
        })),
      ),
    )
    const beside = present(present(found(table(cells)).conclusion.freshness).answer)
    near(beside.slope, answer.slope_per_min)
    expect(beside.df).toBe(answer.df)
    // t of 7 degrees of freedom at 97.5 %: 2.364624251592784 (the constants beside the examples).
    near((beside.high - beside.low) / 2 / 2.364624251592784, answer.se)
    near(beside.f, answer.level_F)
    near(beside.p, answer.level_p)
  })
})

it('R5a: a factor that splits late is compared by session', () => {
  const { data, answer } = example('R5a')
  const pieces: number[][][] = data.piece_means_session_flight_level
  const cells = pieces.flatMap((bySession, session) =>
    bySession.flatMap((row, flight) =>
      row.map((y, level) => ({ ...{ session, flight, taster: null, level, y } })),
    ),
  )
  const factor = present(found(table(cells, 'piece')).factor)
  expect(factor.df2).toBe(answer.df)
  near(factor.residualSd ** 2, answer.mse)
  for (const [at, { estimate }] of factor.means.entries()) near(estimate, answer.level_means[at])
  const oneDay = table(
    cells.filter(({ session }) => session === 0),
    'piece',
  )
  expect(found(oneDay).factor).toEqual({ reason: 'needs-two-blocks', sessions: 2 })
})

it('R6a: these pieces, freed from a bad day on which a level failed', () => {
  const { data, answer } = example('R6a')
  const scores: (number | null)[][][] = data.scores_session_taster_level
  const cells = scores.flatMap((bySession, session) =>
    bySession.flatMap((row, taster) =>
      row.map((y, level) => ({ ...{ session, taster, level, y } })),
    ),
  )
  const response = found(table(cells))
  const pieces = present(response.pieces)
  for (const [at, { estimate }] of pieces.means.entries())
    near(estimate, answer.adjusted_level_means[at])
  near(pieces.residualSd ** 2, answer.mse)
  near(pieces.f, answer.F)
  near(pieces.p, answer.p)
  for (const { a, b, se } of pieces.pairs) near(se, answer.se_pair[`${a}-${b}`])
  near(present(response.ranks).chiSquare, answer.friedman_Q_ties)
})

it('the slope over these pieces has the error of the tasters’ own slopes', () => {
  // Three tasters, levels 0, 1, 2, slopes 1, 2, 6: mean 3; sd √((4 + 1 + 9)/2) = √7, se √(7/3).
  const cells = [1, 2, 6].flatMap((slope, taster) =>
    [0, 1, 2].map((level) => ({ ...{ session: 0, taster, level, y: 4 + slope * level } })),
  )
  const trend = present(present(found(table(cells)).pieces).trend)
  near(trend.slope, 3)
  near(trend.se, Math.sqrt(7 / 3))
})
