import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { NatsConnection } from '@nats-io/nats-core'
import { configurationOf } from '@/hub/configuration.ts'
import { findServer } from '@/hub/find-server.ts'
import { freePort } from '@/hub/free-port.ts'
import { kitchenClaims } from '@/hub/kitchen-claims.ts'
import { kitchenKeys } from '@/hub/kitchen-keys.ts'
import { messageServer } from '@/hub/message-server.ts'
import { connectionFrom } from '@/hub/own-connection.ts'
import { tableClaims } from '@/hub/table-accounts.ts'
import { inviteLogin, type Login, type Ticket } from '@/table/invite-login.ts'
import { newTable } from '@/table/new-table.ts'
import type { Part } from '@/table/subjects.ts'

const origin = 'http://evenhand.test'
export const nowSeconds = () => Math.floor(Date.now() / 1000)

export interface RunningHub {
  tickets: [Ticket, Ticket]
  /** Kills it as a power cut would, and starts it again on the same folder. */
  restart: () => Promise<void>
  stop: () => Promise<void>
}

/** A real server on free ports of the loopback, with the accounts of two tables. */
export async function runHub(): Promise<RunningHub> {
  const server = findServer()
  if (!server) throw new Error('no message server')
  const folder = mkdtempSync(join(tmpdir(), 'evenhand-hub-'))
  const read = kitchenKeys(folder)
  if (!read.ok) throw new Error(read.why)
  const { keys } = read
  const [port, ownPort] = [await freePort(), await freePort()]
  const address = `ws://127.0.0.1:${port}/`
  const now = nowSeconds()
  const table = () => {
    const { keys: told, seeds } = newTable()
    const ticket = { ...{ address, page: address, replicas: 1 }, accounts: told.accounts, seeds }
    return { ticket, claims: tableClaims(keys.operator, told, now) }
  }
  const [one, other] = [table(), table()]
  const own = kitchenClaims(keys, now)
  const configuration = configurationOf(
    { server: keys.server, port, ownPort, folder, origin, mostTables: 4, beside: null },
    { ...own, claims: [...own.claims, ...one.claims, ...other.claims] },
  )
  const file = join(folder, 'hub.conf')
  writeFileSync(file, configuration)
  const running = await messageServer(server.path, file, {
    again: () => undefined,
    gone: (why) => {
      throw new Error(why)
    },
  })
  return {
    tickets: [one.ticket, other.ticket],
    restart: running.kill,
    stop: async () => {
      await running.stop()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

/** Connects as a device would, by WebSocket from the app's own page. */
export const connectAs = (
  { address }: Ticket,
  login: Login,
  from = origin,
): Promise<NatsConnection> => connectionFrom(from, address, login)

export const joinAs = (ticket: Ticket, part: 'owner' | Part, name: string) =>
  connectAs(ticket, inviteLogin(ticket, part, { name, now: nowSeconds() }))
