import type { CsvAssignment } from '@/core/findings/table/csv-columns.ts'
import { csvNumber } from '@/core/findings/table/csv-number.ts'
import { csvRoles } from '@/core/findings/table/csv-role.ts'
import type {
  ResponseDescription,
  TableDescription,
} from '@/core/findings/table/described-table.ts'
import type { CsvOptions } from '@/core/findings/table/scores-of-csv.ts'

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
  { value: 'replicate', label: 'replicate, in no block' },
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
    ...(choices.levelsAre === 'choice' ? { levelsAre: 'choice' } : {}),
    ...(choices.repeats === 'replicates' ? { repeats: 'replicates' } : {}),
    ...(choices.foot === 'leave-out' || choices.foot === 'keep' ? { foot: choices.foot } : {}),
    ...(choices.alike === 'one' || choices.alike === 'two' ? { alike: choices.alike } : {}),
  }
}

/** Under what a response's direction, and under what its margin, is kept. */
export const betterKey = (response: string) => `better ${response}`
export const marginKey = (response: string) => `margin ${response}`

/** What was told of the table besides how to read it; a margin that is no number above zero is none. */
export function toldIn(choices: TableChoices, responses: readonly string[]): TableDescription {
  const { control, main = responses[0] } = choices
  return {
    main: choices.main ?? null,
    responses: Object.fromEntries(
      responses.map((name) => [
        name,
        toldOf(name === main ? ofMain(choices, name) : choices, name),
      ]),
    ),
    control: control ? (csvNumber(control) ?? control) : null,
    factorName: choices.factorName ?? '',
    unitOfMeasure: choices.unitOfMeasure ?? '',
  }
}

/** What was told of the main response alone, before each was asked about, still counts for it. */
function ofMain(choices: TableChoices, response: string): TableChoices {
  const { better = '', margin = '' } = choices
  return { [betterKey(response)]: better, [marginKey(response)]: margin, ...choices }
}

function toldOf(choices: TableChoices, response: string): ResponseDescription {
  const better = choices[betterKey(response)]
  const size = csvNumber((choices[marginKey(response)] ?? '').trim())
  return {
    better: better === 'higher' || better === 'lower' ? better : 'neither',
    margin: size !== null && size > 0 ? size : null,
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
