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

function sentenceOf({ reason, text, expected, found, first }: CsvTrouble): string {
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
    case 'level-missing':
      return 'The level is blank. Every row needs one.'
    case 'session-missing':
      return 'The session is blank. Every row needs one, or leave the whole column out.'
    case 'flight-missing':
      return 'The flight is blank. Every score needs one, or leave the whole column out.'
    case 'taster-missing':
      return 'The taster is blank. Every row needs one, or leave the whole column out.'
    case 'row-twice':
      return `The same session, flight, level and taster stand in row ${first}. Give what was tasted or measured again a flight of its own, or take one row out.`
    case 'batch-two-levels':
      return `This batch has another level in row ${first}. One dough has one level.`
    case 'piece-two-levels':
      return `This piece has another level in row ${first}. One piece has one level.`
    case 'control-not-a-level':
      return `The control “${text}” is no level of the table. Name one that is.`
    case 'too-many-rows':
      return 'The table has more than a million rows. Split it by response.'
  }
}

/** The offer to convert a wide table, one column a level, into rows. */
export function wideOfferText({ columns }: WideOffer): string {
  return `This looks like a wide table, one column a level (${listText(columns)}). It can be turned into rows.`
}
