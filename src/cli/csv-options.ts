import { type CsvAssignment, csvRoles } from '@/core/findings/table/csv-columns.ts'
import { csvNumber } from '@/core/findings/table/csv-number.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import type { CsvOptions } from '@/core/findings/table/scores-of-csv.ts'
import { type ToldOfTable, toldOfTable } from '@/core/findings/table/told-of-table.ts'
import { listText } from '@/core/wording/words/list-text.ts'
import { CommandTrouble } from './trouble.ts'
import type { Asked, VerbOption } from './verb.ts'

const roles: readonly string[] = [...csvRoles, 'response', 'ignore']

/** What a table of scores cannot say of itself, and a trial file can. */
export const tableOptions: Record<string, VerbOption> = {
  as: {
    type: 'string',
    multiple: true,
    value: 'MEANING=COLUMN',
    help: `what a column of a table is: ${roles.join(', ')}`,
  },
  unit: {
    type: 'string',
    value: 'batch|piece',
    help: 'what got its level separately; batch unless said',
  },
  control: { type: 'string', value: 'LEVEL', help: 'the level that is the usual one' },
  main: {
    type: 'string',
    value: 'RESPONSE',
    help: 'the response the verdict is about; the first column of numbers unless said',
  },
  better: {
    type: 'string',
    value: 'higher|lower|neither',
    help: 'which way the main response is better; higher unless said',
  },
  margin: { type: 'string', value: 'NUMBER', help: 'the smallest difference to care about' },
  wide: {
    type: 'string',
    value: 'NAME',
    help: 'turn a table with one column a level into rows; NAME names what was scored',
  },
}

/** Refuses, for a trial file, the options of a table: the trial says these things itself. */
export function refuseTableOptions({ file, texts }: Asked): void {
  const given = Object.keys(tableOptions).filter((option) => texts(option).length > 0)
  if (given.length > 0)
    throw new CommandTrouble(
      `${file}: --${given.join(', --')} is for tables of scores; a trial file says that itself. Leave it out.`,
    )
}

/** What the terminal says of a table of scores. Throws `CommandTrouble` naming the option and the mend. */
export function csvOptions({ text, texts }: Asked): CsvOptions {
  const unit = text('unit')
  const margin = text('margin')
  const control = text('control')
  const name = text('wide')
  if (unit !== undefined && unit !== 'batch' && unit !== 'piece')
    throw new CommandTrouble(`--unit ${unit}: write batch or piece.`)
  const marginNumber = margin === undefined ? null : csvNumber(margin)
  if (margin !== undefined && !(marginNumber !== null && marginNumber > 0))
    throw new CommandTrouble(`--margin ${margin}: write a number above zero.`)
  return {
    as: texts('as').flatMap(assignmentsOf),
    ...(unit === undefined ? {} : { unit }),
    ...(marginNumber === null ? {} : { margin: marginNumber }),
    ...(control === undefined ? {} : { control: csvNumber(control) ?? control }),
    ...(name === undefined ? {} : { tidyAs: name }),
  }
}

const directions: readonly ToldOfTable['better'][] = ['higher', 'lower', 'neither']

/** The table with its main response first, its margin, and which way it is better. Throws `CommandTrouble` naming option and mend. */
export function withMainResponse(scores: ScoreTable, asked: Asked): ScoreTable {
  const main = asked.text('main') ?? null
  const wish = asked.text('better') ?? 'higher'
  const better = directions.find((each) => each === wish)
  if (better === undefined)
    throw new CommandTrouble(`--better ${wish}: write ${listText(directions, 'or')}.`)
  const names = scores.responses.map(({ name }) => name)
  if (main !== null && !names.includes(main))
    throw new CommandTrouble(
      `--main ${main}: the table has no such response. It has ${listText(names)}.`,
    )
  const { margin = null } = csvOptions(asked)
  const columnsSay = { control: null, factorName: '', unitOfMeasure: '' }
  return toldOfTable(scores, { main, better, margin, ...columnsSay })
}

/** `session=Tag,taster=Who`, or one a time. */
function assignmentsOf(given: string): CsvAssignment[] {
  return given.split(',').map((part) => {
    const [meaning = '', ...column] = part.split('=')
    const role = roles.find((each) => each === meaning.trim().toLowerCase())
    if (role === undefined || column.length === 0)
      throw new CommandTrouble(
        `--as ${given}: write MEANING=COLUMN, the meaning one of ${roles.join(', ')}.`,
      )
    return { role: role as CsvAssignment['role'], column: column.join('=') }
  })
}
