import { plainManner, writeAs } from '@/core/units/manner.ts'
import { dataVersion } from '@/trial-file/data-version.ts'
import { commandOf } from './command.ts'
import { generalHelp, verbHelp } from './help.ts'
import { CommandTrouble } from './trouble.ts'
import { unitsAsked } from './units-asked.ts'
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
  if (name === undefined || name === '--help' || name === '-h' || name === 'help')
    return generalHelp()
  if (name === '--version') return `Evenhand ${__APP_VERSION__}, data version ${dataVersion}`
  const load = Object.hasOwn(verbs, name) ? verbs[name] : undefined
  if (!load)
    throw new CommandTrouble(
      `${name}: there is no such verb. The verbs are ${Object.keys(verbs).join(', ')}.`,
    )
  const verb = await load()
  const command = commandOf(name, verb, rest)
  if (command === 'help') return verbHelp(name, verb)
  writeAs(command.flag('json') ? plainManner : unitsAsked(command.text('units')))
  try {
    return await verb.answer(command)
  } finally {
    writeAs(plainManner)
  }
}
