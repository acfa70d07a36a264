import { isLevel } from './csv-levels.ts'
import type { LevelName, ScoreTable } from './score-table.ts'

/** What a person tells of one response: which way it is better, and the smallest difference that matters in it. */
export interface ResponseDescription {
  better: 'higher' | 'lower' | 'neither'
  margin: number | null
}

/** What a person tells of a table of scores that its columns cannot say. */
export interface TableDescription {
  /** The response that stands first; the first column of numbers unless named. */
  main: string | null
  /** By the response's heading; of one that is not told of, no direction is claimed. */
  responses: Readonly<Partial<Record<string, ResponseDescription>>>
  /** A level that the table does not have marks none. */
  control: LevelName | null
  factorName: string
  unitOfMeasure: string
}

/** A table of scores with what was told of it: nothing of its numbers changes, only their order and their names. */
export function describedTable(scores: ScoreTable, told: TableDescription): ScoreTable {
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
      control: told.control === null ? level.control : isLevel(level.name, told.control),
    })),
    responses: order.flatMap((from) => {
      const response = scores.responses[from]
      if (!response) return []
      const own = told.responses[response.id]
      if (!own) return response
      return { ...response, better: { is: own.better }, margin: own.margin ?? response.margin }
    }),
    rows: scores.rows.map((row) => ({
      ...row,
      values: order.map((from) => row.values[from] ?? null),
    })),
  }
}

function mainFirst({ responses }: ScoreTable, main: string | null): number[] {
  const places = responses.map((_, index) => index)
  const first = responses.findIndex(({ id }) => id === main)
  return first > 0 ? [first, ...places.filter((place) => place !== first)] : places
}
