import { textList } from './text-table.ts'
import { unitsOption } from './units-asked.ts'
import type { Verb } from './verb.ts'
import { verbs } from './verbs.ts'
import { wrapped } from './wrapped.ts'

const start = 'npm run --silent evenhand --'

/** The page that lists the verbs. */
export async function generalHelp(): Promise<string> {
  const rows = await Promise.all(
    Object.entries(verbs).map(async ([name, load]) => {
      const { summary, several } = await load()
      return [`  ${name} FILE${several ? ' FILE …' : ''}`, summary] as const
    }),
  )
  return [
    `Usage: ${start} VERB FILE [options]`,
    textList(rows),
    wrapped(
      `FILE is a trial file; findings also reads a table of scores (CSV). VERB --help tells the options of a verb. --version tells the versions of program and data. An answer exits with 0, trouble with 1.`,
    ),
  ].join('\n\n')
}

/** The page of one verb. */
export function verbHelp(name: string, verb: Verb): string {
  const options = Object.entries({ ...verb.options, units: unitsOption }).map(
    ([option, { value, help }]) => [`  --${option}${value ? ` ${value}` : ''}`, help] as const,
  )
  return [
    `Usage: ${start} ${name} FILE${verb.several ? ' FILE …' : ''} [options]`,
    wrapped(`${verb.summary[0]?.toUpperCase()}${verb.summary.slice(1)}. ${verb.about}`),
    textList(options),
  ].join('\n\n')
}
