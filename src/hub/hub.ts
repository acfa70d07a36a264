import encodeQR from 'qr'
import { askedHub, type HubAct, hubHelp } from './asked-hub.ts'
import { type HubTrouble, troubleText, wordsOf } from './hub-trouble.ts'
import { forgetTable, keptTables } from './kept-tables.ts'
import { runsOn } from './runs-on.ts'
import { type HubAsked, type RunningHub, startHub } from './start-hub.ts'

/** `npm run hub`: starts a hub and keeps it until ctrl-c. Exits with 0 after a stop in order, with 1 after trouble. */
export async function run(words: readonly string[]): Promise<number> {
  const read = askedHub(words, process.env)
  if (!read.ok) {
    if (read.help) console.log(hubHelp)
    else console.error(read.why)
    return read.help ? 0 : 1
  }
  if (read.act.kind !== 'start') return await answered(read.act, read.asked.folder)
  let end: (code: number) => void = () => undefined
  const ended = new Promise<number>((done) => {
    end = done
  })
  const started = await startHub(read.asked, {
    again: () => console.error('The message server ended of itself and is started again.'),
    gone: (trouble) => {
      console.error(troubleText(trouble))
      end(1)
    },
    troubled: (failure) => console.error(`An ask for a table failed: ${wordsOf(failure)}`),
  })
  if (!started.ok) return refused(started.trouble)
  console.log(await greeting(read.asked, started.hub))
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => end(0))
  const code = await ended
  await started.hub.stop()
  if (code === 0) console.log('The hub is stopped; what it holds is there again at the next start.')
  return code
}

/** Names the tables in a hub's folder, or takes one off. */
async function answered(act: HubAct, folder: string): Promise<number> {
  const tables = keptTables(folder)
  if (act.kind !== 'forget') {
    const lines = tables.map(({ name, signedAt, bytes }) => {
      const day = new Date(signedAt * 1000).toISOString().slice(0, 10)
      return `${name}  ${day}  ${Math.ceil(bytes / 1000)} kB`
    })
    console.log([`${folder} holds ${tables.length} tables.`, ...lines].join('\n'))
    return 0
  }
  const table = tables.find(({ name }) => name === act.name)
  if (!table) return refused({ reason: 'no-such-table', name: act.name })
  const server = await runsOn(folder)
  if (server !== null) return refused({ reason: 'runs-already', path: folder, process: server })
  forgetTable(folder, table)
  console.log(`Table ${table.name} is taken off: its codes let nobody in any more.`)
  return 0
}

function refused(trouble: HubTrouble): number {
  console.error(troubleText(trouble))
  return 1
}

/** What is said once it runs: the address, what it lets reach it, and the code for whoever opens tables. */
async function greeting(asked: HubAsked, { here, there, version, tables }: RunningHub) {
  const page = (link: string) => link.split('#')[0] ?? ''
  const held = await tables()
  const sealed = there === null || there.startsWith('https:')
  return [
    `The hub runs (message server ${version}; ${held === 1 ? '1 table' : `${held} tables`} of at most ${asked.mostTables}). Ctrl-c stops it.`,
    `On this machine:  ${page(here)}`,
    there === null
      ? 'Nobody else can reach it; --lan ADDRESS opens it to your network.'
      : `In the network:   ${page(there)}`,
    ...(sealed
      ? []
      : [
          'Without a certificate pages in the network can seal nothing: whoever runs this hub or listens in the network can read what is sent, and phones have no camera and no days offline. docs/hub.md tells the three ways.',
        ]),
    'Whoever opens tables needs this code: pasted on this machine, or scanned from another. Keep it like a password; guests never need it.',
    here,
    ...(there === null ? [] : [there, scanCode(there)]),
  ].join('\n')
}

/** A code to scan in half blocks, dark on light whatever the terminal's own colours are. */
function scanCode(text: string): string {
  const rows = encodeQR(text, 'raw', { ecc: 'low', border: 2 })
  const half = (upper: boolean | undefined, lower: boolean | undefined) =>
    upper ? (lower ? '█' : '▀') : lower ? '▄' : ' '
  const lines = Array.from({ length: Math.ceil(rows.length / 2) }, (_, at) => {
    const [upper = [], lower = []] = [rows[at * 2], rows[at * 2 + 1]]
    return upper.map((dark, column) => half(dark, lower[column])).join('')
  })
  return lines.map((line) => `\u001b[30;107m${line}\u001b[0m`).join('\n')
}
