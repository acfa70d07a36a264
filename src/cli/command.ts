import { parseArgs } from 'node:util'
import { CommandTrouble } from './trouble.ts'
import type { Asked, Verb } from './verb.ts'

type Values = Record<string, string | boolean | (string | boolean)[] | undefined>

/** What the words after a verb ask of it. Throws `CommandTrouble` for an option or file it cannot take. */
export function commandOf(name: string, verb: Verb, words: readonly string[]): Asked | 'help' {
  const { values, positionals } = parsed(name, verb, words)
  if (values.help === true) return 'help'
  const [file, more] = positionals
  const one = verb.several !== true
  if (file === undefined)
    throw new CommandTrouble(`${name}: name a file. ${name} --help tells more.`)
  if (more !== undefined && one)
    throw new CommandTrouble(`${more}: ${name} takes one file at a time.`)
  const texts = (option: string) => [values[option] ?? []].flat().map(String)
  return {
    file,
    files: positionals,
    flag: (option) => values[option] === true,
    texts,
    text: (option) => texts(option)[0],
  }
}

function parsed(name: string, verb: Verb, words: readonly string[]) {
  const options = Object.fromEntries(
    Object.entries(verb.options).map(([option, { type, multiple }]) => [
      option,
      { type, multiple: multiple ?? false },
    ]),
  )
  try {
    return parseArgs({
      args: withNegatives(verb, words),
      options: { ...options, units: { type: 'string' }, help: { type: 'boolean', short: 'h' } },
      allowPositionals: true,
    }) as { values: Values; positionals: string[] }
  } catch (failure) {
    const reason = failure instanceof Error ? failure.message.split(/\. |\n/)[0] : String(failure)
    throw new CommandTrouble(`${name}: ${reason}. ${name} --help lists the options.`)
  }
}

/** `--control -20` as `--control=-20`: a number below zero is a value, no option. */
function withNegatives(verb: Verb, words: readonly string[]): string[] {
  const joined: string[] = []
  for (const word of words) {
    const before = joined.at(-1) ?? ''
    const takesText = before.startsWith('--') && verb.options[before.slice(2)]?.type === 'string'
    if (takesText && /^-[\d.,]/.test(word)) joined[joined.length - 1] = `${before}=${word}`
    else joined.push(word)
  }
  return joined
}
