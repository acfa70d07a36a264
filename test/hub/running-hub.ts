import { type ChildProcess, spawn } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { jwtAuthenticator, type NatsConnection, wsconnect } from '@nats-io/nats-core'
import { WebSocket } from 'ws'
import { configurationOf, newOperator } from '@/hub/configuration.ts'
import { findServer } from '@/hub/find-server.ts'
import { tableAccounts } from '@/hub/table-accounts.ts'
import { inviteLogin, type Login, type Ticket } from '@/table/invite-login.ts'
import type { Part } from '@/table/subjects.ts'

const origin = 'http://evenhand.test'
export const nowSeconds = () => Math.floor(Date.now() / 1000)

async function freePort(): Promise<number> {
  const server = createServer()
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done))
  const address = server.address()
  await new Promise((done) => server.close(done))
  if (address === null || typeof address === 'string') throw new Error('no port')
  return address.port
}

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
  mkdirSync(join(folder, 'accounts'))
  const [port, ownPort] = [await freePort(), await freePort()]
  const address = `ws://127.0.0.1:${port}/`
  const now = nowSeconds()
  const { operator, claim, systemId, systemClaim } = newOperator(now)
  const [one, other] = [
    tableAccounts(operator, address, now),
    tableAccounts(operator, address, now),
  ] as const
  const configuration = configurationOf(
    { host: '127.0.0.1', port, ownPort, folder, origins: [origin], certificate: null },
    {
      operatorClaim: claim,
      systemId,
      claims: [{ account: systemId, claim: systemClaim }, ...one.claims, ...other.claims],
    },
  )
  const file = join(folder, 'hub.conf')
  writeFileSync(file, configuration)
  const start = async () => {
    const child = spawn(server.path, ['-c', file], { stdio: ['ignore', 'ignore', 'pipe'] })
    await ready(child)
    return child
  }
  let child = await start()
  const ended = async (signal: NodeJS.Signals) => {
    const gone = new Promise((done) => child.once('exit', done))
    child.kill(signal)
    await gone
  }
  return {
    tickets: [one.ticket, other.ticket],
    restart: async () => {
      await ended('SIGKILL')
      child = await start()
    },
    stop: async () => {
      await ended('SIGTERM')
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

async function ready(child: ChildProcess): Promise<void> {
  let said = ''
  await new Promise<void>((done, fail) => {
    child.stderr?.on('data', (piece) => {
      said += piece
      if (said.includes('Server is ready')) done()
    })
    child.once('exit', () => fail(new Error(said.slice(-2000))))
  })
}

/** Connects as a device would, by WebSocket from the app's own page. */
export async function connectAs(
  { address }: Ticket,
  { name, claim, seed }: Login,
  from = origin,
): Promise<NatsConnection> {
  return await wsconnect({
    servers: address,
    authenticator: jwtAuthenticator(claim, new TextEncoder().encode(seed)),
    inboxPrefix: `_INBOX.${name}`,
    reconnect: false,
    timeout: 4000,
    wsFactory: async (url) => ({
      socket: new WebSocket(url, { origin: from }) as unknown as globalThis.WebSocket,
      encrypted: false,
    }),
  })
}

export const joinAs = (ticket: Ticket, part: 'owner' | Part, name: string) =>
  connectAs(ticket, inviteLogin(ticket, part, { name, now: nowSeconds() }))
