import type { CsvRole } from './csv-role.ts'

/**
 * Something in a table of scores that cannot be read, placed by row (the header is row 1, as a spreadsheet counts) and
 * column (its heading). Every trouble of a file is listed, not the first alone.
 *
 * - `no-text`: nothing to read. `broken-quotes`: a quotation mark is opened and not closed, or stands inside a bare cell.
 * - `field-count`: the row has more or fewer cells than the header (`expected`, `found`).
 * - `column-twice`: two columns have one heading or one meaning. `no-such-column`: an assignment names a column that is not there.
 * - `no-level-column`, `no-response-column`: the table lacks what findings are about. `no-rows`: a header without rows.
 * - `unreadable-number`: `text` is no number. `out-of-reach`: a number past 1e15, or below 1e-15, which nobody can reckon with. `level-missing`, `session-missing`, `flight-missing`, `taster-missing`, `replicate-missing`: a blank where the row needs one.
 * - `row-twice`: session, flight, level, taster and replicate stand in an earlier row (`first`); said once for all (`count`), with the
 *   column that likely tells them apart and what it would be (`role`).
 * - `foot-row`: rows from here to the end (`count`) sum up what stands over them. `alike-names`: two spellings of a name in this column.
 * - `batch-two-levels`, `piece-two-levels`: one dough or piece cannot have two.
 * - `control-not-a-level`: the level named as the control is not in the table. `too-many-rows`: beyond half a million.
 */
export interface CsvTrouble {
  reason:
    | 'no-text'
    | 'broken-quotes'
    | 'field-count'
    | 'column-twice'
    | 'no-such-column'
    | 'no-level-column'
    | 'no-response-column'
    | 'no-rows'
    | 'unreadable-number'
    | 'out-of-reach'
    | 'level-missing'
    | 'session-missing'
    | 'flight-missing'
    | 'taster-missing'
    | 'replicate-missing'
    | 'row-twice'
    | 'foot-row'
    | 'alike-names'
    | 'batch-two-levels'
    | 'piece-two-levels'
    | 'control-not-a-level'
    | 'too-many-rows'
  row: number | null
  column: string | null
  text?: string
  expected?: number
  found?: number
  /** How many rows, or names, it is about. */
  count?: number
  /** What the column would be. */
  role?: CsvRole
  /** The earlier row a second one repeats or contradicts. */
  first?: number
}
