import type { Spread } from '@/core/design/spread.ts'
import type { ScoreRow, ScoreTable } from '@/core/findings/table/score-table.ts'

/** What a rehearsed trial is made of, with the spreads of scores, tasters' own taste, pieces and batches. */
export interface RehearsalDesign {
  levels: number
  tasters: number
  sessions: number
  flights: number
  unit: 'batch' | 'piece'
  spread: Spread
  margin: number
}

/**
 * A made-up trial in which the factor does nothing: the same panel throughout; each score the sum of its taster, the
 * taster's own taste for the level (centred over the panel, so that for these tasters no level is better), its batch (for a
 * piece factor one dough a session), its piece and a residual. `normal` gives independent standard normal draws.
 */
export function nullTrial(design: RehearsalDesign, normal: () => number): ScoreTable {
  const { tasters, sessions, flights, unit, spread } = design
  const levels = Array.from({ length: design.levels }, (_, level) => level)
  const panel = Array.from({ length: tasters }, normal)
  const taste = levels.map(() => centred(Array.from({ length: tasters }, normal)))
  const rows: ScoreRow[] = []
  for (let session = 0; session < sessions; session += 1) {
    const day = spread.batch * normal()
    const dough = levels.map(() => (unit === 'batch' ? spread.batch * normal() : day))
    for (let flight = 0; flight < flights; flight += 1) {
      for (const level of levels) {
        const piece = (dough[level] ?? 0) + spread.piece * normal()
        for (const [taster, own] of panel.entries()) {
          const tasted = spread.tasterLevel * (taste[level]?.[taster] ?? 0)
          rows.push({
            session: `${session}`,
            flight: `${session} ${flight}`,
            batch: unit === 'batch' ? `${session} ${level}` : `${session}`,
            piece: `${session} ${flight} ${level}`,
            level,
            taster: `t${taster}`,
            position: null,
            minutes: null,
            handled: null,
            values: [5 + own + tasted + piece + spread.residual * normal()],
          })
        }
      }
    }
  }
  return tableOf(design, levels, rows)
}

function tableOf(design: RehearsalDesign, levels: readonly number[], rows: ScoreRow[]): ScoreTable {
  const { unit, margin } = design
  return {
    factor: { kind: 'own', name: 'factor', unitOfMeasure: '', ordered: true, splitsAt: null },
    unit,
    levels: levels.map((at) => ({ name: at, value: at, label: `${at}`, control: false })),
    responses: [
      { name: 'liking', scale: 'nine-point', better: { is: 'higher' }, margin, failures: 0 },
    ],
    rows,
    expectation: null,
    tellApart: [],
    ease: null,
  }
}

function centred(draws: readonly number[]): number[] {
  const mean = draws.reduce((sum, draw) => sum + draw, 0) / draws.length
  return draws.map((draw) => draw - mean)
}
