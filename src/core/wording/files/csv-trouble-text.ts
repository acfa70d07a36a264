import type { CsvRole } from '@/core/findings/table/csv-role.ts'
import type { CsvTrouble } from '@/core/findings/table/csv-trouble.ts'
import type { WideOffer } from '@/core/findings/table/csv-wide.ts'
import { listText } from '@/core/wording/words/list-text.ts'

/** What cannot be read in a table of scores, where, and the mend. */
export function csvTroubleText(trouble: CsvTrouble): string {
  const place = [
    trouble.row === null ? '' : `row ${trouble.row}`,
    trouble.column === null ? '' : `column “${trouble.column}”`,
  ].filter(Boolean)
  const said = sentenceOf(trouble)
  return place.length === 0 ? said : `${place.join(', ')}: ${said}`
}

function sentenceOf(trouble: CsvTrouble): string {
  const { reason, text, expected, found, first, count = 1, column } = trouble
  switch (reason) {
    case 'no-text':
      return 'The file is empty. Save the sheet as CSV with its headings in the first row.'
    case 'broken-quotes':
      return 'A quotation mark is opened and not closed. Double a mark that belongs to the text.'
    case 'field-count':
      return `This row has ${found} cells, the header has ${expected}. Mind separators inside a text: put that text in quotation marks.`
    case 'column-twice':
      return 'Two columns have this heading or meaning. Rename one, or leave it out with ignore.'
    case 'no-such-column':
      return 'There is no such column. Write its heading as it stands in the first row.'
    case 'no-level-column':
      return 'No column holds the level. Name one “level”, or say which it is.'
    case 'no-response-column':
      return 'No column holds scores. Add one with a number in each row.'
    case 'no-rows':
      return 'There are headings and no rows under them.'
    case 'unreadable-number':
      return `“${text}” is no number. Write digits, or leave the cell blank where there is no score.`
    case 'out-of-reach':
      return `“${text}” is too large or too small to reckon with. Write it in a unit that keeps it between 1e-15 and 1e15.`
    case 'level-missing':
      return 'The level is blank. Every row needs one.'
    case 'session-missing':
      return 'The session is blank. Every row needs one, or leave the whole column out.'
    case 'flight-missing':
      return 'The flight is blank. Every score needs one, or leave the whole column out.'
    case 'taster-missing':
      return 'The taster is blank. Every row needs one, or leave the whole column out.'
    case 'replicate-missing':
      return 'The replicate is blank. Every row needs one, or leave the whole column out.'
    case 'row-twice':
      return `${twiceText(count, trouble.row, first)} ${
        column === null
          ? 'Give what was tasted or measured again a column that says so: a session, a flight, a taster, or a replicate (a dough or loaf made again, in no block). Where every row is a dough of its own, read the rows as replicates.'
          : `This column likely tells them apart: say that it is ${roleText(trouble)}, or which other column does.`
      }`
    case 'foot-row':
      return `${text === undefined ? 'A row that names nobody and nothing stands at the foot' : `“${text}” stands at the foot`}${
        count > 1 ? `, ${count} such rows in all` : ''
      }. It seems to sum up the rows over it; counted, it would be one more score. Leave it out, or keep it.`
    case 'alike-names':
      return `“${text}” differ in capitals or spaces alone${
        count > 1 ? `, and so do ${count - 1} more` : ''
      }. Are they one, or two?`
    case 'batch-two-levels':
      return `This batch has another level in row ${first}. One dough has one level.`
    case 'piece-two-levels':
      return `This piece has another level in row ${first}. One piece has one level.`
    case 'control-not-a-level':
      return `The control “${text}” is no level of the table. Name one that is.`
    case 'too-many-rows':
      return 'The table has more than half a million rows (500,000). Split it by response.'
  }
}

function twiceText(count: number, row: number | null, first: number | undefined): string {
  return count === 1
    ? `The same session, flight, level and taster stand in row ${first}.`
    : `${count} rows have the session, flight, level and taster of an earlier one, first row ${row} those of row ${first}.`
}

const roleTexts: Readonly<Partial<Record<CsvRole, string>>> = {
  taster: 'the taster',
  session: 'the session',
  flight: 'the flight',
  replicate: 'the replicate (a dough or loaf made again, in no block)',
}

function roleText({ role }: CsvTrouble): string {
  return (role && roleTexts[role]) ?? 'the replicate'
}

/** That loaves or doughs were made again in no block, and what the error then is. */
export const replicatedText =
  'Doughs or loaves of a level were made again in no block: the table is read as completely randomised, with one error, that between those of one level.'

/** The offer to convert a wide table, one column a level, into rows. */
export function wideOfferText({ columns }: WideOffer): string {
  return `This looks like a wide table, one column a level (${listText(columns)}). It can be turned into rows.`
}
