import type { NatsConnection } from '@nats-io/nats-core'
import type { Login } from '@/table/invite-login.ts'
import type { Line, Running, TableServices } from './services.ts'

/** Until a line is tried again: soon where it was cut, later where the hub does not let the login in. */
const pauseMilliseconds = { away: 1500, refused: 15_000 } as const

/** What is done over a line each time it comes about, until `ended`. */
export type AtLine = (connection: NatsConnection, ended: AbortSignal) => Promise<void>

/** Holds a line to the hub as a login: tries until it comes about, does `atLine` with it, and tries anew when it was cut. */
export function holdLine(
  { connect, onFailure }: Pick<TableServices, 'connect' | 'onFailure'>,
  address: string,
  login: Login,
  atLine: AtLine,
): Running {
  let line: Line = 'connecting'
  const listeners = new Set<() => void>()
  const stopped = new AbortController()
  const tell = (next: Line) => {
    if (line === next) return
    line = next
    for (const listener of listeners) listener()
  }
  /** One line from its coming about to its end; gives why it ended, where that is known. */
  const once = async (): Promise<unknown> => {
    const connection = await connect(address, login)
    const ended = new AbortController()
    const end = () => ended.abort()
    stopped.signal.addEventListener('abort', end)
    const closed = connection.closed().finally(end)
    try {
      tell('here')
      await atLine(connection, ended.signal)
      if (!ended.signal.aborted) await untilAborted(ended.signal)
      if (stopped.signal.aborted) await connection.close()
      return await closed
    } finally {
      stopped.signal.removeEventListener('abort', end)
      end()
      await connection.close()
    }
  }
  const run = async () => {
    while (!stopped.signal.aborted) {
      const why = await once().catch((failure: unknown) => failure)
      if (stopped.signal.aborted) return
      const next = isRefusal(why) ? 'refused' : 'away'
      if (next === 'away' && why instanceof Error && !isOfLine(why)) onFailure(why)
      tell(next)
      await paused(pauseMilliseconds[next], stopped.signal)
    }
  }
  const running = run()
  return {
    line: () => line,
    subscribe: (listener) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
    stop: async () => {
      stopped.abort()
      await running
    },
  }
}

/** The hub's word that a login is unknown, past its time or revoked. */
const isRefusal = (failure: unknown) =>
  failure instanceof Error &&
  /authori[sz]ation|authentication|expired|revoked/i.test(`${failure.name} ${failure.message}`)

/** That the line did not come about, was cut, or nobody answered on it in time: no failure, it is tried again. */
const isOfLine = ({ name }: Error) =>
  /^(Connection|Timeout|ClosedConnection|DrainingConnection|Request|Protocol)Error$|^NoResponders/.test(
    name,
  )

function untilAborted(signal: AbortSignal): Promise<void> {
  return new Promise((done) => signal.addEventListener('abort', () => done(), { once: true }))
}

/** Waits so long, or until the signal. */
export function paused(milliseconds: number, until: AbortSignal): Promise<void> {
  return new Promise((done) => {
    if (until.aborted) return done()
    const end = () => {
      clearTimeout(timer)
      until.removeEventListener('abort', end)
      done()
    }
    const timer = setTimeout(end, milliseconds)
    until.addEventListener('abort', end)
  })
}
