import { type CsvAssignment, csvRoles } from '@/core/findings/csv-columns.ts'
import type { CsvOptions } from '@/core/findings/scores-of-csv.ts'
import { CommandTrouble } from './trouble.ts'
import type { Asked } from './verb.ts'

const roles: readonly string[] = [...csvRoles, 'response', 'ignore']

/** What the terminal says of a table of scores. Throws `CommandTrouble` naming the option and the mend. */
export function csvOptions({ text, texts }: Asked): CsvOptions {
  const unit = text('unit')
  const margin = text('margin')
  const control = text('control')
  const name = text('wide')
  if (unit !== undefined && unit !== 'batch' && unit !== 'piece')
    throw new CommandTrouble(`--unit ${unit}: write batch or piece.`)
  if (margin !== undefined && !(Number(margin) > 0))
    throw new CommandTrouble(`--margin ${margin}: write a number above zero.`)
  return {
    as: texts('as').flatMap(assignmentsOf),
    ...(unit === undefined ? {} : { unit }),
    ...(margin === undefined ? {} : { margin: Number(margin) }),
    ...(control === undefined
      ? {}
      : { control: Number.isNaN(Number(control)) ? control : Number(control) }),
    ...(name === undefined ? {} : { tidyAs: name }),
  }
}

/** `session=Tag,taster=Who`, or one a time. */
function assignmentsOf(given: string): CsvAssignment[] {
  return given.split(',').map((part) => {
    const [role = '', ...column] = part.split('=')
    if (!roles.includes(role.trim()) || column.length === 0)
      throw new CommandTrouble(
        `--as ${given}: write MEANING=COLUMN, the meaning one of ${roles.join(', ')}.`,
      )
    return { role: role.trim() as CsvAssignment['role'], column: column.join('=') }
  })
}
