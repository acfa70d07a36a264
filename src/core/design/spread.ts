/** Standard deviations of what makes one answer differ from another, in the response's own unit. */
export interface Spread {
  /** One taster, one piece, asked again. */
  residual: number
  /** Tasters' own taste: how differently they take the levels. */
  tasterLevel: number
  /** Pieces of one dough. */
  piece: number
  /** Doughs of one level. */
  batch: number
}

/** Before the notebook has learned better, on a nine-point liking scale: common practice, no source. */
export const commonSpread: Spread = { residual: 1.2, tasterLevel: 0.6, piece: 0.6, batch: 0.4 }
