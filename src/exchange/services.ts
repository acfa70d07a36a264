import type { NatsConnection } from '@nats-io/nats-core'
import type { Notebook } from '@/notebook/notebook.ts'
import type { Login } from '@/table/invite-login.ts'
import type { TableStore } from './table-store.ts'

/** What an open table is given. */
export interface TableServices {
  notebook: Notebook
  store: TableStore
  /** UTC milliseconds. */
  now: () => number
  /** A whole number of 32 bits by chance. */
  draw: () => number
  /** Connects as a login. The connection does not come back by itself: a new one is made. */
  connect: (address: string, login: Login) => Promise<NatsConnection>
  /** Told what went wrong on the way, such as a full device: never that the hub is away. */
  onFailure: (failure: unknown) => void
}

/** `away`: the hub is not reached; it is tried again. `refused`: the hub does not let this login in any more. */
export type Line = 'connecting' | 'here' | 'away' | 'refused'

/** An exchange at work, until it is stopped. */
export interface Running {
  line: () => Line
  /** Told whenever the line changes. */
  subscribe: (listener: () => void) => () => void
  stop: () => Promise<void>
}
