import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { ArchiveTable } from './archive-table.ts'
import { ordersTable } from './orders-table.ts'
import { formulaTable, levelsTable, methodTable, weightsTable } from './plan-tables.ts'
import { ballotsTable, logTable, observationsTable } from './record-tables.ts'

/** The tables of a trial: levels, formula, method, weights, log, ballots, and one row an observation. */
export function archiveTables(trial: WholeTrial, scores: ScoreTable): ArchiveTable[] {
  return [
    levelsTable(trial),
    formulaTable(trial),
    methodTable(trial),
    weightsTable(trial),
    logTable(trial),
    ballotsTable(trial),
    ...ordersTable(trial),
    observationsTable(trial, scores),
  ]
}
