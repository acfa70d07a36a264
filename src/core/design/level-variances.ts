import { commonSpread, type Spread } from './spread.ts'

/** What the variance of a level's mean depends on: tasters, flights a session, sessions, what gets its level separately. */
export interface MadeAndTasted {
  tasters: number
  flights: number
  sessions: number
  unit: 'batch' | 'piece'
  spread?: Spread
}

/**
 * Variance of one level's mean as each rung compares it: these pieces (σ_tl² + σ_r²/F)/J; these doughs (σ_p² + σ_r²/J)/f; the factor by batches, the
 * same tasters throughout, (σ_b² + σ_p²/f + σ_r²/(J·f))/S, by pieces (σ_p² + σ_r²/J)/F (what a day does to a level of a late factor is
 * not known and left out); J tasters, f flights a session, S sessions, F = f·S. The common spread where none is given.
 */
export function levelVariances({ tasters, flights, sessions, unit, spread }: MadeAndTasted) {
  const { residual, tasterLevel, piece, batch } = spread ?? commonSpread
  const rounds = flights * sessions
  const own = residual ** 2
  const ofPieces = piece ** 2 + own / tasters
  return {
    thesePieces: (tasterLevel ** 2 + own / rounds) / tasters,
    theseDoughs: ofPieces / flights,
    theFactor:
      unit === 'piece'
        ? ofPieces / rounds
        : (batch ** 2 + piece ** 2 / flights + own / (tasters * flights)) / sessions,
  }
}
