import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { csvForSpeed } from './csv-for-speed.ts'
import { scoresForSpeed } from './scores-for-speed.ts'
import { mediansInTurn } from './timed.ts'

const start = 'src/cli/start.cjs'
const samples = ['pan-loaf-salt', 'flatbread-hydration', 'focaccia-hydration']

/**
 * What the machine adds by itself: Node reads a file of extra certificates, where the environment names one, before it runs
 * the first line of anything. It is left out here, and said beside.
 */
const { NODE_EXTRA_CA_CERTS: certificates, ...environment } = process.env

/** Measures commands from start to end as a person waits for them, each in a process of its own, all in turn. */
export function measureBareCommands(say: (what: string, milliseconds: number) => void): void {
  const folder = mkdtempSync(join(tmpdir(), 'evenhand-speed-'))
  const table = join(folder, 'scores.csv')
  writeFileSync(table, csvForSpeed(scoresForSpeed({ levels: 5, tasters: 10, sessions: 2 })))
  const node = (...given: string[]) => ({ what: given.slice(1).join(' '), command: 'node', given })
  const runs = [
    { what: 'node alone', command: 'node', given: ['-e', '0'] },
    {
      ...node(start, 'findings', table, '--json'),
      what: 'findings --json, 5 levels x 10 tasters x 2 sessions',
    },
    node(start, '--version'),
    ...samples.flatMap((name) => {
      const file = join('trials', `${name}.json`)
      return [
        ...['check', 'weigh', 'fairness', 'detect', 'findings'].map((verb) =>
          node(start, verb, file),
        ),
        {
          ...node(start, 'report', file, '--out', join(folder, 'report.html')),
          what: `report ${file}`,
        },
      ]
    }),
    {
      what: 'the first findings, started by npm',
      command: 'npm',
      given: ['run', '--silent', 'evenhand', '--', 'findings', table, '--json'],
    },
  ]
  const times = mediansInTurn(
    runs.map(
      ({ command, given }) =>
        () =>
          succeed(command, given),
    ),
    15,
    2,
  )
  for (const [at, { what }] of runs.entries())
    say(`as a process of its own: ${what}`, times[at] as number)
  if (certificates !== undefined) {
    const withThem = { ...environment, NODE_EXTRA_CA_CERTS: certificates }
    const [alone = 0] = mediansInTurn([() => succeed('node', ['-e', '0'], withThem)], 9, 2)
    say('node alone with the extra certificates of this machine', alone)
  }
  rmSync(folder, { recursive: true })
}

/** Runs a command to its end. Throws when it fails, since a failure has no speed. */
function succeed(command: string, given: readonly string[], env = environment): void {
  const { status, stderr } = spawnSync(command, given, { encoding: 'utf8', env })
  if (status !== 0) throw new Error(`${command} ${given.join(' ')} failed: ${stderr}`)
}
