import type { Spread } from '@/core/design/spread.ts'
import type { ScoreRow, ScoreTable, WrittenForScores } from '@/core/findings/table/score-table.ts'
import { normalLower } from '@/core/statistics/distributions/normal.ts'
import type { Expectation } from '@/core/trial/expectation.ts'

/** What a rehearsed trial is made of, with the spreads of scores, tasters' own taste, pieces and batches. */
export interface RehearsalDesign {
  levels: number
  tasters: number
  sessions: number
  flights: number
  unit: 'batch' | 'piece'
  spread: Spread
  margin: number
  /** Values of the levels; 0, 1, 2 … unless given. */
  values?: readonly number[]
}

/** What is true of a made trial, and what was written before it. */
export interface MadeTruth {
  /** What each level adds to the score. */
  effects: readonly number[]
  expected: Expectation['direction'] | null
  written?: WrittenForScores | null
  /** Whole scores from 1 to 9, as tasters give them, instead of unbounded ones. */
  rounded?: boolean
  /** The middle of the scale that scores lie around; 5 unless given. */
  around?: number
  /** So many units, a level in a session each, are lost from every trial; none unless given. */
  lost?: number
}

/**
 * A made-up trial: the same panel throughout; each score the sum of its level's effect, its taster, the taster's own taste for the level (centred over the panel, so
 * that for these tasters the effects are the truth), its batch (for a piece factor one dough a session), its piece and a residual.
 * `normal` gives independent standard normal draws.
 */
export function madeTrial(
  design: RehearsalDesign,
  truth: MadeTruth,
  normal: () => number,
): ScoreTable {
  const { tasters, sessions, flights, unit, spread } = design
  const { effects, rounded = false, around = 5 } = truth
  const levels = effects.map((_, level) => level)
  const panel = Array.from({ length: tasters }, normal)
  const taste = levels.map(() => centred(Array.from({ length: tasters }, normal)))
  const given = (score: number) => (rounded ? Math.min(9, Math.max(1, Math.round(score))) : score)
  const rows: ScoreRow[] = []
  for (let session = 0; session < sessions; session += 1) {
    const day = spread.batch * normal()
    const dough = levels.map(() => (unit === 'batch' ? spread.batch * normal() : day))
    for (let flight = 0; flight < flights; flight += 1) {
      for (const level of levels) {
        const piece = (dough[level] ?? 0) + spread.piece * normal()
        for (const [taster, own] of panel.entries()) {
          const tasted = spread.tasterLevel * (taste[level]?.[taster] ?? 0)
          const score =
            around + (effects[level] ?? 0) + own + tasted + piece + spread.residual * normal()
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
            values: [given(score)],
          })
        }
      }
    }
  }
  return tableOf(design, truth, withoutLost(rows, truth.lost ?? 0, normal))
}

/** Rows without some units, drawn from all of them; a level keeps at least one. */
function withoutLost(rows: ScoreRow[], lost: number, normal: () => number): ScoreRow[] {
  let kept = rows
  for (let count = 0; count < lost; count += 1) {
    const units = [...new Set(kept.map(unitKey))]
    const gone = units[Math.min(units.length - 1, Math.floor(normalLower(normal()) * units.length))]
    const rest = kept.filter((row) => unitKey(row) !== gone)
    if (
      new Set(rest.map(({ level }) => level)).size === new Set(kept.map(({ level }) => level)).size
    )
      kept = rest
  }
  return kept
}

const unitKey = ({ session, level }: ScoreRow) => `${session} ${level}`

function tableOf(design: RehearsalDesign, truth: MadeTruth, rows: ScoreRow[]): ScoreTable {
  const { unit, margin } = design
  const { expected, written, effects } = truth
  return {
    factor: { kind: 'own', name: 'factor', unitOfMeasure: '', ordered: true, splitsAt: null },
    unit,
    levels: effects.map((_, at) => {
      const value = design.values?.[at] ?? at
      return { id: `${value}`, name: value, value, label: `${value}`, control: at === 0 }
    }),
    responses: [
      {
        ...{ id: 'liking', name: 'Liking', scale: 'nine-point' },
        ...{ better: { is: 'higher' }, margin, failures: 0 },
      },
    ],
    rows,
    expectation: expected === null ? null : { direction: expected, bestGuess: null },
    written: written ?? null,
    tellApart: [],
    ease: null,
  }
}

function centred(draws: readonly number[]): number[] {
  const mean = draws.reduce((sum, draw) => sum + draw, 0) / draws.length
  return draws.map((draw) => draw - mean)
}
