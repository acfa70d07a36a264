/**
 * Something in a table of scores that cannot be read, placed by row (the header is row 1, as a spreadsheet counts) and
 * column (its heading). Every trouble of a file is listed, not the first alone.
 *
 * - `no-text`: nothing to read. `broken-quotes`: a quotation mark is opened and not closed, or stands inside a bare cell.
 * - `field-count`: the row has more or fewer cells than the header (`expected`, `found`).
 * - `column-twice`: two columns have one heading or one meaning. `no-such-column`: an assignment names a column that is not there.
 * - `no-level-column`, `no-response-column`: the table lacks what findings are about. `no-rows`: a header without rows.
 * - `unreadable-number`: `text` is no number. `level-missing`, `session-missing`, `flight-missing`, `taster-missing`: a blank where the row needs one.
 * - `row-twice`: session, flight, level and taster stand in an earlier row (`first`); placed at the taster, without tasters at the level. `batch-two-levels`, `piece-two-levels`: one dough or piece cannot have two.
 * - `control-not-a-level`: the level named as the control is not in the table. `too-many-rows`: beyond a million.
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
    | 'level-missing'
    | 'session-missing'
    | 'flight-missing'
    | 'taster-missing'
    | 'row-twice'
    | 'batch-two-levels'
    | 'piece-two-levels'
    | 'control-not-a-level'
    | 'too-many-rows'
  row: number | null
  column: string | null
  text?: string
  expected?: number
  found?: number
  /** The earlier row a second one repeats or contradicts. */
  first?: number
}
