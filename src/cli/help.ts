import { textTable } from './text-table.ts'
import type { Verb } from './verb.ts'
import { verbs } from './verbs.ts'
import { wrapped } from './wrapped.ts'

/** The page that lists the verbs. */
export async function generalHelp(): Promise<string> {
  const rows = await Promise.all(
    Object.entries(verbs).map(async ([name, load]) => [`  ${name} FILE`, (await load()).summary]),
  )
  return [
    'Usage: npm run --silent evenhand -- VERB FILE [options]',
    textTable(['Verb', ''], rows, [false, false]),
    'VERB --help tells the options of a verb. An answer exits with 0, trouble with 1.',
  ].join('\n\n')
}

/** The page of one verb. */
export function verbHelp(name: string, verb: Verb): string {
  const options = Object.entries(verb.options).map(([option, { value, help }]) => [
    `  --${option}${value ? ` ${value}` : ''}`,
    help,
  ])
  return [
    `Usage: npm run --silent evenhand -- ${name} FILE [options]`,
    wrapped(`${verb.summary[0]?.toUpperCase()}${verb.summary.slice(1)}. ${verb.about}`),
    textTable(['Option', ''], options, [false, false]),
  ].join('\n\n')
}
