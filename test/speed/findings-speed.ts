import { bootstrapOfBest } from '@/core/findings/best/bootstrap-of-best.ts'
import { responseFindings } from '@/core/findings/response-findings.ts'
import { cellsOf } from '@/core/findings/rungs/cells.ts'
import { piecesRung } from '@/core/findings/rungs/higher-rungs.ts'
import { tasterMeans } from '@/core/findings/rungs/taster-means.ts'
import { scoresOfCsv } from '@/core/findings/table/scores-of-csv.ts'
import { csvForSpeed } from './csv-for-speed.ts'
import { scoresForSpeed } from './scores-for-speed.ts'
import { leastMilliseconds, medianMilliseconds, mediansInTurn } from './timed.ts'

/** Measures the findings of tables of several sizes, and the reading of a spreadsheet. */
export function measureFindings(say: (what: string, value: number, unit?: string) => void): void {
  const middling = scoresForSpeed({ levels: 5, tasters: 10, sessions: 2 })
  const cells = cellsOf(middling, 0)
  const higher = { is: 'higher' } as const
  say(
    'one rung with all pairs, 5 levels x 10 tasters x 2 sessions',
    medianMilliseconds(() => piecesRung(middling, cells, tasterMeans(cells, 5), higher), 101),
  )
  // Another seed each time, since the draws of one are kept.
  let seed = 0
  const bootstrap = () => bootstrapOfBest(middling, 0, { seed: ++seed, resamples: 10_000 })
  say('bootstrap of the best, 10,000 resamples, same shape', medianMilliseconds(bootstrap, 21))
  const large = scoresForSpeed({ levels: 6, tasters: 12, sessions: 4 })
  say(
    'all findings of one response, 6 levels x 12 tasters x 4 sessions, no bootstrap, after 1,000 runs (R after its own: 4.2)',
    medianMilliseconds(() => responseFindings(large, 0, null), 201, 1000),
  )
  say(
    'the same, the least of 201 runs',
    leastMilliseconds(() => responseFindings(large, 0, null), 201),
  )
  const sessionsOf = (rows: number) => Math.ceil(rows / 72)
  const tables = [10_000, 100_000].map((rows) =>
    scoresForSpeed({ levels: 6, tasters: 12, sessions: sessionsOf(rows) }),
  )
  const times = mediansInTurn(
    tables.map((scores) => () => responseFindings(scores, 0, null)),
    11,
  )
  for (const [at, { rows }] of tables.entries())
    say(
      `all findings of one response, ${rows.length.toLocaleString('en')} scores`,
      times[at] as number,
    )
  const [small = 1, big = 0] = times
  say('times longer for ten times the scores', big / small, '')
  const texts = [10_000, 100_000].map((rows) =>
    csvForSpeed(scoresForSpeed({ levels: 6, tasters: 12, sessions: sessionsOf(rows) })),
  )
  for (const text of texts) {
    const lines = text.split('\n').length - 1
    say(
      `reading a spreadsheet of ${lines.toLocaleString('en')} lines`,
      medianMilliseconds(() => scoresOfCsv(text), 5),
    )
  }
}
