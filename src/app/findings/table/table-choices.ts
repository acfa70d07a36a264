import { type CsvAssignment, csvRoles } from '@/core/findings/table/csv-columns.ts'
import { csvNumber } from '@/core/findings/table/csv-number.ts'
import type { CsvOptions } from '@/core/findings/table/scores-of-csv.ts'
import type { ToldOfTable } from '@/core/findings/table/told-of-table.ts'

/** What was chosen for a table, as texts: so they are kept over a reload beside the table itself. */
export type TableChoices = Readonly<Record<string, string>>

export type Meaning = CsvAssignment['role']

export const meanings: readonly { value: Meaning; label: string }[] = [
  { value: 'level', label: 'level' },
  { value: 'taster', label: 'taster' },
  { value: 'session', label: 'session' },
  { value: 'flight', label: 'flight' },
  { value: 'batch', label: 'batch' },
  { value: 'piece', label: 'piece' },
  { value: 'position', label: 'place in order' },
  { value: 'minutes', label: 'minutes, oven to mouth' },
  { value: 'response', label: 'response' },
  { value: 'ignore', label: 'left out' },
]

const before = 'as '

/** How the table is to be read. */
export function optionsOf(choices: TableChoices): CsvOptions {
  const as = Object.entries(choices).flatMap(([key, value]): CsvAssignment[] => {
    const meaning = meanings.find((each) => each.value === value)
    return key.startsWith(before) && meaning
      ? [{ role: meaning.value, column: key.slice(before.length) }]
      : []
  })
  return {
    as,
    unit: choices.unit === 'piece' ? 'piece' : 'batch',
    ...(choices.tidyAs ? { tidyAs: choices.tidyAs } : {}),
  }
}

/** What was told of the table besides how to read it; a margin that is no number above zero is none. */
export function toldIn(choices: TableChoices): ToldOfTable {
  const { control, margin, better } = choices
  const size = margin === undefined ? null : csvNumber(margin.trim())
  return {
    main: choices.main ?? null,
    better: better === 'lower' || better === 'neither' ? better : 'higher',
    margin: size !== null && size > 0 ? size : null,
    control: control ? (csvNumber(control) ?? control) : null,
    factorName: choices.factorName ?? '',
    unitOfMeasure: choices.unitOfMeasure ?? '',
  }
}

/** The choices after a column was given a meaning; a meaning that only one column can have leaves the one that had it. */
export function withMeaning(choices: TableChoices, column: string, meaning: Meaning): TableChoices {
  const single = csvRoles.some((role) => role === meaning)
  const kept = Object.entries(choices).filter(
    ([key, value]) => !(single && key.startsWith(before) && value === meaning),
  )
  return { ...Object.fromEntries(kept), [`${before}${column}`]: meaning }
}
