import type { CsvAssignment } from '@/core/findings/table/csv-columns.ts'
import { csvNumber } from '@/core/findings/table/csv-number.ts'
import { csvRoles } from '@/core/findings/table/csv-role.ts'
import { describedTable, type ResponseDescription } from '@/core/findings/table/described-table.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import type { CsvOptions } from '@/core/findings/table/scores-of-csv.ts'
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
    multiple: true,
    value: '[RESPONSE=]higher|lower|neither',
    help: 'which way a response is better, the main one unless named; nobody claims one unless it is said',
  },
  margin: {
    type: 'string',
    multiple: true,
    value: '[RESPONSE=]NUMBER',
    help: 'the smallest difference to care about, in the main response unless named',
  },
  levels: {
    type: 'string',
    value: 'choice',
    help: 'levels are names, such as product codes, whatever they look like',
  },
  repeats: {
    type: 'string',
    value: 'replicates',
    help: 'rows that stand twice are doughs or loaves made again, in no block',
  },
  foot: {
    type: 'string',
    value: 'leave-out|keep',
    help: 'what becomes of rows at the foot that sum up the others',
  },
  alike: {
    type: 'string',
    value: 'one|two',
    help: 'whether names that differ in capitals or spaces alone are one',
  },
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
export function csvOptions(asked: Asked): CsvOptions {
  const { text, texts } = asked
  const control = text('control')
  const name = text('wide')
  const unit = oneOf(asked, 'unit', ['batch', 'piece'])
  const levelsAre = oneOf(asked, 'levels', ['choice'])
  const repeats = oneOf(asked, 'repeats', ['replicates'])
  const foot = oneOf(asked, 'foot', ['leave-out', 'keep'])
  const alike = oneOf(asked, 'alike', ['one', 'two'])
  return {
    as: texts('as').flatMap(assignmentsOf),
    ...(unit === undefined ? {} : { unit }),
    ...(control === undefined ? {} : { control: csvNumber(control) ?? control }),
    ...(name === undefined ? {} : { tidyAs: name }),
    ...(levelsAre === undefined ? {} : { levelsAre }),
    ...(repeats === undefined ? {} : { repeats }),
    ...(foot === undefined ? {} : { foot }),
    ...(alike === undefined ? {} : { alike }),
  }
}

function oneOf<T extends string>(
  { text }: Asked,
  option: string,
  words: readonly T[],
): T | undefined {
  const wish = text(option)
  const found = words.find((word) => word === wish)
  if (wish !== undefined && found === undefined)
    throw new CommandTrouble(`--${option} ${wish}: write ${listText(words, 'or')}.`)
  return found
}

const directions: readonly ResponseDescription['better'][] = ['higher', 'lower', 'neither']

/**
 * The table with its main response first, and of each response which way it is better and its margin, where they are said.
 * Throws `CommandTrouble` naming option and mend.
 */
export function withMainResponse(scores: ScoreTable, { text, texts }: Asked): ScoreTable {
  const names = scores.responses.map(({ name }) => name)
  const known = (option: string, given: string, name: string) => {
    if (names.includes(name)) return name
    throw new CommandTrouble(
      `--${option} ${given}: the table has no such response. It has ${listText(names)}.`,
    )
  }
  const wish = text('main')
  const main = wish === undefined ? null : known('main', wish, wish)
  const first = main ?? names[0] ?? ''
  /** `NAME=said`, or what is said of the main response. */
  const parted = (option: string, given: string): [string, string] => {
    const at = given.lastIndexOf('=')
    return at < 0 ? [first, given] : [known(option, given, given.slice(0, at)), given.slice(at + 1)]
  }
  const responses: Record<string, ResponseDescription> = {}
  const tell = (name: string, said: Partial<ResponseDescription>) => {
    responses[name] = { better: 'neither', margin: null, ...responses[name], ...said }
  }
  for (const given of texts('better')) {
    const [name, said] = parted('better', given)
    const better = directions.find((each) => each === said)
    if (better === undefined)
      throw new CommandTrouble(`--better ${given}: write ${listText(directions, 'or')}.`)
    tell(name, { better })
  }
  for (const given of texts('margin')) {
    const [name, said] = parted('margin', given)
    const margin = csvNumber(said)
    if (margin === null || !(margin > 0))
      throw new CommandTrouble(`--margin ${given}: write a number above zero.`)
    tell(name, { margin })
  }
  return describedTable(scores, {
    main,
    responses,
    control: null,
    factorName: '',
    unitOfMeasure: '',
  })
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
