import { cpus } from 'node:os'
import { measureBackup } from './backup-speed.ts'
import { measureBareCommands } from './bare-commands.ts'
import { measureBench } from './bench-speed.ts'
import { type BuiltApp, withBuiltApp } from './built-app.ts'
import { measureClock, measureDays } from './clock-speed.ts'
import { measureFindings } from './findings-speed.ts'
import { measureFirstScreen } from './first-screen-speed.ts'
import { measureNotebook } from './home-speed.ts'
import { measureKeys } from './keys-in-plan.ts'
import { measureLarge } from './large-trial-speed.ts'
import { measurePlan } from './plan-speed.ts'

type Say = (what: string, value: number, unit?: string) => void

/** The parts of the measurement by name, in their order; `browser` ones share one built app. */
const parts: Record<string, (say: Say) => void> = {
  findings: measureFindings,
  commands: measureBareCommands,
  plan: measurePlan,
  clock: measureClock,
  days: measureDays,
}
const browserParts: Record<string, (app: BuiltApp, say: Say) => Promise<void>> = {
  keys: measureKeys,
  bench: measureBench,
  home: measureNotebook,
  first: measureFirstScreen,
  large: measureLarge,
  backup: measureBackup,
}

/**
 * Measures what a baker waits for and prints it with the machine it ran on; compares nothing. `npm run speed -- keys bench`
 * measures these parts alone.
 */
export async function run(asked: string[]): Promise<number> {
  const names = [...Object.keys(parts), ...Object.keys(browserParts)]
  const unknown = asked.filter((name) => !names.includes(name))
  if (unknown.length > 0) {
    process.stderr.write(`speed has no part ${unknown.join(', ')}; it has ${names.join(', ')}\n`)
    return 2
  }
  const wanted = (name: string) => asked.length === 0 || asked.includes(name)
  const [cpu] = cpus()
  const say: Say = (what, value, unit = 'ms') =>
    process.stdout.write(`${value.toFixed(2).padStart(10)} ${unit.padEnd(2)}  ${what}\n`)
  process.stdout.write(
    `Node ${process.version}, ${cpus().length} x ${cpu?.model ?? 'unknown'}; medians\n`,
  )
  for (const [name, measure] of Object.entries(parts)) if (wanted(name)) measure(say)
  const inBrowser = Object.entries(browserParts).filter(([name]) => wanted(name))
  if (inBrowser.length > 0)
    await withBuiltApp(async (app) => {
      for (const [, measure] of inBrowser) await measure(app, say)
    })
  return 0
}
