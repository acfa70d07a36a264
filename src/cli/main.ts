import { parseArgs } from 'node:util'
import { generalHelp, verbHelp } from './help.ts'
import { CommandTrouble } from './trouble.ts'
import type { Asked, Verb } from './verb.ts'
import { verbs } from './verbs.ts'

/** Runs one command: prints its answer and gives the exit code, 0, or 1 with the trouble on the error stream. */
export async function main(words: readonly string[]): Promise<number> {
  try {
    process.stdout.write(`${await answer(words)}\n`)
    return 0
  } catch (trouble) {
    if (!(trouble instanceof CommandTrouble)) throw trouble
    process.stderr.write(`${trouble.message}\n`)
    return 1
  }
}

async function answer([name, ...rest]: readonly string[]): Promise<string> {
  if (name === undefined || name === '--help' || name === 'help') return generalHelp()
  const load = Object.hasOwn(verbs, name) ? verbs[name] : undefined
  if (!load)
    throw new CommandTrouble(
      `${name}: there is no such verb. The verbs are ${Object.keys(verbs).join(', ')}.`,
    )
  const verb = await load()
  const { values, positionals } = parsed(name, verb, rest)
  if (values.help === true) return verbHelp(name, verb)
  const [file, more] = positionals
  if (file === undefined)
    throw new CommandTrouble(`${name}: name a file. ${name} --help tells more.`)
  if (more !== undefined) throw new CommandTrouble(`${more}: ${name} takes one file at a time.`)
  return verb.answer(askedOf(file, values))
}

type Values = Record<string, string | boolean | (string | boolean)[] | undefined>

function parsed(name: string, verb: Verb, args: readonly string[]) {
  const options = Object.fromEntries(
    Object.entries(verb.options).map(([option, { type, multiple }]) => [
      option,
      { type, multiple: multiple ?? false },
    ]),
  )
  try {
    return parseArgs({
      args: [...args],
      options: { ...options, help: { type: 'boolean' } },
      allowPositionals: true,
    }) as { values: Values; positionals: string[] }
  } catch (failure) {
    const reason = failure instanceof Error ? failure.message.split('. ')[0] : String(failure)
    throw new CommandTrouble(`${name}: ${reason}. ${name} --help lists the options.`)
  }
}

function askedOf(file: string, values: Values): Asked {
  const texts = (name: string) => [values[name] ?? []].flat().map(String)
  return { file, flag: (name) => values[name] === true, texts, text: (name) => texts(name)[0] }
}
