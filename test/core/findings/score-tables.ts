import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import type { CsvOptions } from '@/core/findings/table/scores-of-csv.ts'
import { scoresOfCsv } from '@/core/findings/table/scores-of-csv.ts'

type Cell = number | string | null

/** A score table from rows of named columns, by way of the spreadsheet import; more is better in every response. */
export function tableOf(
  rows: readonly Record<string, Cell>[],
  options: CsvOptions = {},
): ScoreTable {
  const header = [...new Set(rows.flatMap((row) => Object.keys(row)))]
  const lines = rows.map((row) => header.map((column) => row[column] ?? '').join(','))
  const read = scoresOfCsv([header.join(','), ...lines].join('\n'), options)
  if (!read.ok) throw new Error(JSON.stringify(read.troubles))
  const { responses } = read.scores
  const higher = responses.map((response) => ({ ...response, better: { is: 'higher' as const } }))
  return { ...read.scores, responses: higher }
}

/** A seeded stream of numbers in 0..1 (mulberry32), good enough to make up scores. */
export function madeUp(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
}

/** Made-up scores: sessions x flights x levels x tasters of a top at 68 with some noise, whole numbers when `round`. */
export function madeUpRows(options: {
  seed: number
  levels: readonly (number | string)[]
  tasters: number
  sessions: number
  flights?: number
  round?: boolean
}): Record<string, Cell>[] {
  const random = madeUp(options.seed)
  const rows: Record<string, Cell>[] = []
  for (let session = 1; session <= options.sessions; session += 1) {
    for (let flight = 1; flight <= (options.flights ?? 1); flight += 1) {
      for (const [at, level] of options.levels.entries()) {
        for (let taster = 0; taster < options.tasters; taster += 1) {
          const bend = typeof level === 'number' ? -0.02 * (level - 68) ** 2 : 0.3 * at
          const y = 6 + bend + 0.3 * taster + 2 * (random() - 0.5)
          rows.push({
            session,
            flight,
            level,
            taster: `t${taster}`,
            position: at + 1,
            minutes: 4 + 3 * random(),
            liking: options.round ? Math.min(9, Math.max(1, Math.round(y))) : y,
          })
        }
      }
    }
  }
  return rows
}
