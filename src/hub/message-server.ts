import { type ChildProcess, spawn } from 'node:child_process'

/** A message server that was started on a configuration, and is started again where it ends of itself. */
export interface MessageServer {
  /** Its process. */
  id: () => number
  /** Kills it as a power cut would, and waits until it is started again and ready. */
  kill: () => Promise<void>
  /** Kills it and leaves it so, as a machine that is gone. */
  fall: () => Promise<void>
  /** Has it finish what it writes, and end. */
  stop: () => Promise<void>
}

/** How often it may end of itself before it is left, and within what time. */
const often = { times: 5, withinMilliseconds: 60_000 }

export interface Watched {
  /** It ended and is being started again. */
  again: () => void
  /** It ended too often, or could not be started again; `why` is the end of what it said. */
  gone: (why: string) => void
}

/** Starts `program` on a configuration and waits until it is ready; rejects with the end of what it said where it does not start. */
export async function messageServer(
  program: string,
  configuration: string,
  watched: Watched,
): Promise<MessageServer> {
  let stopping = false
  let back: (() => void) | null = null
  const ends: number[] = []
  const begin = async (): Promise<ChildProcess> => {
    // In a group of its own: ctrl-c in the terminal is for the hub, which then stops its server in order.
    const child = spawn(program, ['-c', configuration], {
      ...{ stdio: ['ignore', 'ignore', 'pipe'], detached: true },
    })
    const said = await ready(child)
    child.once('exit', () => void ended(said()))
    return child
  }
  const ended = async (why: string): Promise<void> => {
    if (stopping) return
    const now = Date.now()
    // What was asked for is no trouble of the server's.
    if (!back) ends.push(now)
    if (ends.filter((at) => at > now - often.withinMilliseconds).length > often.times)
      return watched.gone(why)
    watched.again()
    try {
      current = await begin()
      if (stopping) current.kill('SIGTERM')
      back?.()
      back = null
    } catch (failure) {
      watched.gone(failure instanceof Error ? failure.message : String(failure))
    }
  }
  let current = await begin()
  const end = async (signal: NodeJS.Signals) => {
    stopping = true
    if (current.exitCode !== null || current.signalCode !== null) return
    const gone = new Promise((done) => current.once('exit', done))
    current.kill(signal)
    await gone
  }
  return {
    id: () => current.pid ?? 0,
    kill: async () => {
      const again = new Promise<void>((done) => {
        back = done
      })
      current.kill('SIGKILL')
      await again
    },
    fall: () => end('SIGKILL'),
    stop: () => end('SIGTERM'),
  }
}

/** Waits until it says that it is ready; gives what answers the end of what it has said since. */
async function ready(child: ChildProcess): Promise<() => string> {
  let said = ''
  await new Promise<void>((done, fail) => {
    child.stderr?.on('data', (piece) => {
      said = `${said}${piece}`.slice(-4000)
      if (said.includes('Server is ready')) done()
    })
    child.once('error', fail)
    child.once('exit', () => fail(new Error(lastLines(said))))
  })
  return () => lastLines(said)
}

/** Its last lines without time and process, those of trouble first of all. */
function lastLines(said: string): string {
  const lines = said.trim().split('\n')
  const troubles = lines.filter((line) => /\[(FTL|ERR)\]|error|nats-server:/i.test(line))
  return (troubles.length > 0 ? troubles : lines)
    .slice(-3)
    .map((line) => line.replace(/^\[\d+\] \S+ \S+ /, ''))
    .join(' ')
}
