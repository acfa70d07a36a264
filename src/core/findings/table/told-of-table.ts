import type { LevelName } from '@/core/findings/rungs/rung-shape.ts'
import type { ScoreTable } from './score-table.ts'

/** What a person tells of a table of scores that its columns cannot say. */
export interface ToldOfTable {
  /** The response that stands first; the first column of numbers unless named. */
  main: string | null
  better: 'higher' | 'lower' | 'neither'
  /** The smallest difference that matters in the main response. */
  margin: number | null
  /** A level that the table does not have marks none. */
  control: LevelName | null
  factorName: string
  unitOfMeasure: string
}

/** A table of scores with what was told of it: nothing of its numbers changes, only their order and their names. */
export function toldOfTable(scores: ScoreTable, told: ToldOfTable): ScoreTable {
  const order = mainFirst(scores, told.main)
  return {
    ...scores,
    factor: {
      ...scores.factor,
      name: told.factorName.trim() || scores.factor.name,
      unitOfMeasure: scores.factor.ordered
        ? told.unitOfMeasure.trim() || scores.factor.unitOfMeasure
        : '',
    },
    levels: scores.levels.map((level) => ({
      ...level,
      control: told.control === null ? level.control : level.name === told.control,
    })),
    responses: order.flatMap((from, index) => {
      const response = scores.responses[from]
      if (!response) return []
      return index === 0
        ? { ...response, better: { is: told.better }, margin: told.margin ?? response.margin }
        : { ...response, margin: null }
    }),
    rows: scores.rows.map((row) => ({
      ...row,
      values: order.map((from) => row.values[from] ?? null),
    })),
  }
}

function mainFirst({ responses }: ScoreTable, main: string | null): number[] {
  const places = responses.map((_, index) => index)
  const first = responses.findIndex(({ name }) => name === main)
  return first > 0 ? [first, ...places.filter((place) => place !== first)] : places
}
