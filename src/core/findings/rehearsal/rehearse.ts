import { chanceFrom } from '@/core/design/chance.ts'
import { verdictOf } from '@/core/findings/judged/verdict.ts'
import { type Absent, isPresent } from '@/core/findings/reason.ts'
import type { VerdictKind } from '@/core/findings/response-findings-shape.ts'
import { cellsOf } from '@/core/findings/rungs/cells.ts'
import { doughsRung, factorRung, piecesRung } from '@/core/findings/rungs/higher-rungs.ts'
import { rowsRung } from '@/core/findings/rungs/rows-rung.ts'
import type { FittedRung } from '@/core/findings/rungs/rung-of.ts'
import { tasterMeans } from '@/core/findings/rungs/taster-means.ts'
import { normalDraws } from './normal-draws.ts'
import { nullTrial, type RehearsalDesign } from './null-trial.ts'

export const rehearsedRungs = ['rows', 'pieces', 'doughs', 'factor'] as const
export type RehearsedRung = (typeof rehearsedRungs)[number]

/** How often a rung spoke without cause: trials it answered, those with an F beyond 5 %, and each kind of verdict said. */
export interface RungTally {
  answered: number
  called: number
  said: Record<VerdictKind, number>
}

export type Rehearsal = Record<RehearsedRung, RungTally>

/**
 * Rehearses an analysis on made-up trials in which the factor does nothing (see `nullTrial`), drawn from a seed, and
 * counts how often each rung calls a difference at 5 % and what its verdict says. The flat model over all rows stands
 * beside the rungs to show how it overstates.
 */
export function rehearse(design: RehearsalDesign, trials: number, seed: number): Rehearsal {
  const normal = normalDraws(chanceFrom(seed))
  const rehearsal = { rows: tally(), pieces: tally(), doughs: tally(), factor: tally() }
  const higher = { is: 'higher' } as const
  for (let trial = 0; trial < trials; trial += 1) {
    const scores = nullTrial(design, normal)
    const cells = cellsOf(scores, 0)
    const means = tasterMeans(cells, design.levels)
    const { tasters, sessions, margin } = design
    note(rehearsal.rows, rowsRung(scores, cells, higher), margin, false)
    note(rehearsal.pieces, piecesRung(scores, cells, means, higher), margin, tasters >= 4)
    note(rehearsal.doughs, doughsRung(scores, cells, higher), margin, false)
    note(rehearsal.factor, factorRung(scores, cells, higher), margin, sessions >= 3)
  }
  return rehearsal
}

function note(
  rung: RungTally,
  fitted: FittedRung | Absent,
  margin: number,
  mayLean: boolean,
): void {
  if (!isPresent(fitted)) return
  const names = fitted.present.levels.map(({ name }) => name)
  const { kind } = verdictOf(fitted.decisive, names, margin, mayLean)
  rung.answered += 1
  rung.said[kind] += 1
  if (fitted.rung.p < 0.05) rung.called += 1
}

function tally(): RungTally {
  return {
    answered: 0,
    called: 0,
    said: { matters: 0, differs: 0, 'too-small': 0, leans: 0, 'not-settled': 0 },
  }
}
