import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { AckPolicy, jetstream, jetstreamManager } from '@nats-io/jetstream'
import type { NatsConnection } from '@nats-io/nats-core'
import { openTable } from '@/table/hub-desk.ts'
import type { Ticket } from '@/table/invite-login.ts'
import { inviteLogin } from '@/table/invite-login.ts'
import { openStreams } from '@/table/table-streams.ts'
import {
  endsBy,
  loginName,
  sealedAt,
  sealedBallot,
  sent,
  shareOf,
  type TasterAtTable,
  tasterAt,
} from './at-table.ts'
import { nowSeconds } from './running-hub.ts'
import { type StartedHub, startedHub } from './started-hub.ts'

const [tables, tasters, ballots, withinSeconds] = [30, 20, 6, 30]

/** From seal to host in milliseconds, on a machine that also plays all the devices. */
const bounds = { median: 25, ninetyNinth: 500 }

/**
 * `npm run hub:load`: a school's evening at one hub, with sealing and opening as at a table. Exits with 1 where anything is lost,
 * where it took more than the minute, or where a way took longer than its bound.
 */
export async function run(): Promise<number> {
  const begun = performance.now()
  const seconds = () => ((performance.now() - begun) / 1000).toFixed(1)
  const at = await startedHub({ mostTables: tables + 10 })
  try {
    const empty = memoryOf(at)
    const school = await inFives(Array.from({ length: tables }), () => comes(() => tableAt(at)))
    console.log(`${tables} tables open after ${seconds()} s`)
    const seats = await inFives(
      school.flatMap((table) => Array.from({ length: tasters }, () => table)),
      async (table) => {
        const taster = await tasterAt(table.ticket)
        table.tasters.set(taster.subject, taster)
        return { taster, line: await comes(() => at.connect(table.ticket.address, taster.login)) }
      },
    )
    const joined = memoryOf(at)
    console.log(`${seats.length} tasters connected after ${seconds()} s`)
    const whole = school.map((table) => arrived(table, tasters * ballots))
    const sending = performance.now()
    await Promise.all(seats.map((seat) => castAll(seat)))
    const took = await Promise.all(whole)
    const lasted = (performance.now() - sending) / 1000
    const ways = took.flat().toSorted((a, b) => a - b)
    const lost = tables * tasters * ballots - ways.length
    console.log(`${ways.length} ballots in ${lasted.toFixed(1)} s, ${lost} lost`)
    console.log(
      `seal to host: median ${shareOf(ways, 0.5).toFixed(2)} ms, 99th of a hundred ${shareOf(ways, 0.99).toFixed(1)} ms, longest ${Math.max(...ways).toFixed(0)} ms`,
    )
    console.log(
      `message server: ${empty} MB empty, ${joined} MB with ${seats.length + tables} connections, ${memoryOf(at)} MB at the end; disk ${diskOf(at)} MB`,
    )
    await Promise.all([...seats, ...school].map(({ line }) => line.close()))
    return endsBy([
      { says: 'ballots lost', was: lost, most: 0 },
      { says: 'seconds for all', was: Math.round(lasted), most: 60 },
      { says: 'ms from seal to host, median', was: shareOf(ways, 0.5), most: bounds.median },
      { says: 'ms, 99th of a hundred', was: shareOf(ways, 0.99), most: bounds.ninetyNinth },
    ])
  } finally {
    await at.end()
  }
}

interface TableAtHub {
  ticket: Ticket
  line: NatsConnection
  tasters: Map<string, TasterAtTable>
}

async function tableAt(at: StartedHub): Promise<TableAtHub> {
  const answer = await openTable(at.connect, at.code, nowSeconds())
  if (!answer.ok) throw new Error(answer.reason)
  const { ticket } = answer
  const login = inviteLogin(ticket, 'owner', { name: loginName(), now: nowSeconds() })
  const line = await at.connect(ticket.address, login)
  await openStreams(line, ticket.replicas)
  return { ticket, line, tasters: new Map() }
}

/** The milliseconds from seal to host of all ballots of a table; fewer where no more come for ten seconds. */
async function arrived({ line, tasters }: TableAtHub, expected: number): Promise<number[]> {
  const manager = await jetstreamManager(line)
  await manager.consumers.add('B', { durable_name: 'host', ack_policy: AckPolicy.Explicit })
  const messages = await (await jetstream(line).consumers.get('B', 'host')).consume()
  const ways = new Map<string, number>()
  let patience = setTimeout(() => void messages.close(), 45_000)
  for await (const message of messages) {
    const taster = tasters.get(message.subject)
    if (!taster) throw new Error(`a ballot of nobody: ${message.subject}`)
    const { count, at } = await sealedAt(taster, message.data)
    ways.set(`${message.subject} ${count}`, performance.now() - at)
    message.ack()
    if (ways.size === expected) break
    clearTimeout(patience)
    patience = setTimeout(() => void messages.close(), 45_000)
  }
  clearTimeout(patience)
  return [...ways.values()]
}

/** One taster seals its ballots at moments by chance, as people do who taste at their own pace. */
async function castAll({ taster, line }: { taster: TasterAtTable; line: NatsConnection }) {
  const moments = Array.from({ length: ballots }, () => Math.random() * withinSeconds * 1000)
  const begun = performance.now()
  for (const [at, moment] of moments.toSorted((a, b) => a - b).entries()) {
    await new Promise((done) => setTimeout(done, begun + moment - performance.now()))
    const bytes = await sealedBallot(taster, at + 1, performance.now())
    await sent(line, taster.subject, bytes, crypto.randomUUID())
  }
}

/** A device comes to the table, and tries again where the machine that plays all of them was too slow. */
async function comes<T>(act: () => Promise<T>, tries = 5): Promise<T> {
  try {
    return await act()
  } catch (failure) {
    if (tries === 1) throw failure
    return await comes(act, tries - 1)
  }
}

/** Five at a time, as people come to tables. */
async function inFives<From, To>(all: readonly From[], act: (each: From) => Promise<To>) {
  const done: To[] = []
  for (let from = 0; from < all.length; from += 5)
    done.push(...(await Promise.all(all.slice(from, from + 5).map(act))))
  return done
}

const memoryOf = ({ hub }: StartedHub): number => {
  const status = readFileSync(`/proc/${hub.messages.id()}/status`, 'utf8')
  return Math.round(Number(/VmRSS:\s+(\d+)/.exec(status)?.[1]) / 1024)
}
const diskOf = ({ asked }: StartedHub): string =>
  execFileSync('du', ['-sm', asked.folder], { encoding: 'utf8' }).split('\t')[0] ?? ''
