import { chanceFrom } from '@/core/design/chance.ts'
import { conclude } from '@/core/findings/evidence/conclude.ts'
import type { Conclusion } from '@/core/findings/evidence/conclusion-shape.ts'
import { isPresent } from '@/core/findings/reason.ts'
import { cellsOf } from '@/core/findings/rungs/cells.ts'
import { doughsRung, factorRung, piecesRung } from '@/core/findings/rungs/higher-rungs.ts'
import { rowsRung } from '@/core/findings/rungs/rows-rung.ts'
import { tasterMeans } from '@/core/findings/rungs/taster-means.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { type Claim, claims, claimsOf } from './falsehoods.ts'
import { type MadeTruth, madeTrial, type RehearsalDesign } from './made-trial.ts'
import { normalDraws } from './normal-draws.ts'

/** How often a claim was made, and how often it was false. */
export interface ClaimTally {
  said: number
  false: number
}

/** What made trials of one truth said: each claim, the endings, and how often anything of the primary question, or anything at all, was false. */
export interface Rehearsal {
  trials: number
  claims: Record<Claim, ClaimTally>
  endings: Record<Conclusion['ending']['kind'], number>
  /** Any false line, bend, size, inside or pair: the 5 % of the primary question. */
  primaryFalse: number
  /** Any false claim of all, adopting included: of the primary question, too small, and as good together. */
  anyFalse: number
  /** F at 5 % of the flat model over rows and of the pieces, the one overstating, the other of these pieces alone. */
  rowsDiffer: number
  piecesDiffer: number
  leans: number
}

/**
 * Rehearses the conclusions on made-up trials of which the truth is known (see `madeTrial`), drawn from a seed, and counts what they
 * claim, true and false. A place is a set of its own 95 % and no part of the totals.
 */
export function rehearse(
  design: RehearsalDesign,
  truth: MadeTruth,
  trials: number,
  seed: number,
): Rehearsal {
  const normal = normalDraws(chanceFrom(seed))
  const rehearsal = begun(trials)
  const values = truth.effects.map((_, at) => design.values?.[at] ?? at)
  for (let trial = 0; trial < trials; trial += 1) {
    const scores = madeTrial(design, truth, normal)
    const { conclusion, rows, pieces } = concluded(scores)
    const said = claimsOf(conclusion, values, truth.effects)
    note(rehearsal, said, conclusion)
    if (rows < 0.05) rehearsal.rowsDiffer += 1
    if (pieces < 0.05) rehearsal.piecesDiffer += 1
  }
  return rehearsal
}

function concluded(scores: ScoreTable) {
  const cells = cellsOf(scores, 0)
  const higher = { is: 'higher' } as const
  const means = tasterMeans(cells, scores.levels.length)
  const fitted = {
    pieces: piecesRung(scores, cells, means, higher),
    doughs: doughsRung(scores, cells, higher),
    factor: factorRung(scores, cells, higher),
  }
  const rows = rowsRung(scores, cells, higher)
  return {
    conclusion: conclude(scores, 0, cells, fitted),
    rows: isPresent(rows) ? rows.rung.p : 1,
    pieces: isPresent(fitted.pieces) ? fitted.pieces.rung.p : 1,
  }
}

const primary: readonly Claim[] = ['line', 'size', 'bend', 'inside', 'pairs']

function note(
  rehearsal: Rehearsal,
  said: ReadonlyMap<Claim, 'true' | 'false'>,
  conclusion: Conclusion,
): void {
  for (const [claim, holds] of said) {
    rehearsal.claims[claim].said += 1
    if (holds === 'false') rehearsal.claims[claim].false += 1
  }
  const isFalse = (claim: Claim) => said.get(claim) === 'false'
  if (primary.some(isFalse)) rehearsal.primaryFalse += 1
  if ([...primary, 'too-small', 'as-good'].some((claim) => isFalse(claim as Claim)))
    rehearsal.anyFalse += 1
  rehearsal.endings[conclusion.ending.kind] += 1
  if (conclusion.lean) rehearsal.leans += 1
}

function begun(trials: number): Rehearsal {
  const none = () => ({ said: 0, false: 0 })
  return {
    trials,
    claims: Object.fromEntries(claims.map((claim) => [claim, none()])) as Record<Claim, ClaimTally>,
    endings: { adopt: 0, hold: 0, stay: 0, again: 0 },
    ...{ primaryFalse: 0, anyFalse: 0, rowsDiffer: 0, piecesDiffer: 0, leans: 0 },
  }
}
