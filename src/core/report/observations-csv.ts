import Papa from 'papaparse'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'

/**
 * Every recorded value as tidy CSV (RFC 4180: commas, CRLF, quotes doubled): a row is one piece before one taster, a
 * column a response; blank means not answered. Cells that a spreadsheet would run as a formula are defused with a
 * leading quote; numbers stay numbers, also negative ones. The same columns are read back by an import of scores.
 */
export function observationsCsv(whole: WholeTrial, scores: ScoreTable): string {
  const names = namesOf(whole)
  const fields = ['session', 'flight', 'batch', 'piece', 'level', 'taster', 'position', 'minutes']
  const data = scores.rows.map((row) => [
    names.session.get(row.session) ?? row.session,
    names.flight.get(lastPart(row.flight)) ?? '',
    names.batch.get(row.batch) ?? row.batch,
    row.piece,
    scores.levels[row.level]?.name ?? '',
    row.taster === null ? '' : tasterName(row.taster, whole.kitchen),
    row.position ?? '',
    row.minutes === null ? '' : Math.round(row.minutes * 100) / 100,
    ...row.values.map((value) => value ?? ''),
  ])
  return `${Papa.unparse(
    { fields: [...fields, ...scores.responses.map(({ name }) => name)], data },
    { newline: '\r\n', escapeFormulae: dangerous },
  )}\r\n`
}

/** A cell that begins like a formula and is no plain number. */
const dangerous = /^(?!-?\d+(\.\d+)?(e[-+]?\d+)?$)[=+\-@\t\r\n]/i

function namesOf({ sessions }: WholeTrial) {
  return {
    session: new Map(sessions.map(({ id, number }) => [id, number])),
    flight: new Map(
      sessions.flatMap(({ dealt }) => dealt.flights.map(({ id, number }) => [id, number])),
    ),
    batch: new Map(
      sessions.flatMap(({ batches }) => batches.map(({ id, letter }) => [id, letter])),
    ),
  }
}

function lastPart(key: string): string {
  return key.slice(key.lastIndexOf('\u0000') + 1)
}
