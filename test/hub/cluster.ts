import { copyFileSync, mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { jetstreamManager } from '@nats-io/jetstream'
import type { NatsConnection } from '@nats-io/nats-core'
import { freePort } from '@/hub/free-port.ts'
import { connectionFrom } from '@/hub/own-connection.ts'
import { openTable } from '@/table/hub-desk.ts'
import { inviteLogin, type Login } from '@/table/invite-login.ts'
import { openStreams } from '@/table/table-streams.ts'
import { endsBy, loginName, sealedBallot, sent, shareOf, tasterAt } from './at-table.ts'
import { nowSeconds } from './running-hub.ts'
import { type StartedHub, startedHub } from './started-hub.ts'

const [senders, ballots, killedAfter] = [6, 60, 20]

/**
 * `npm run hub:cluster`: three servers together, six devices that send, and the server that leads the ballots killed for good in
 * the middle. Exits with 1 where anything acknowledged is missing or out of order, or half a minute brought no acknowledgement.
 */
export async function run(): Promise<number> {
  const servers = await three()
  try {
    const [first] = servers
    if (!first) throw new Error('no server')
    const answer = await patient(() => openTable(first.connect, first.code, nowSeconds()))
    if (!answer.ok) throw new Error(answer.reason)
    const { ticket } = answer
    const alive = new Set(servers)
    const login = inviteLogin(ticket, 'owner', { name: loginName(), now: nowSeconds() })
    const owner = await lineTo(alive, login)
    await patient(() => openStreams(owner, ticket.replicas))
    const { cluster, config } = await (await jetstreamManager(owner)).streams.info('B')
    console.log(`ballots in ${config.num_replicas} places, led by ${cluster?.leader}`)
    const all = Array.from({ length: senders }, async () => {
      const taster = await tasterAt(ticket)
      const waits: number[] = []
      let again = 0
      let line: NatsConnection | null = null
      let begun = performance.now()
      for (let count = 1; count <= ballots; ) {
        try {
          line ??= await lineTo(alive, taster.login)
          const bytes = await sealedBallot(taster, count, performance.now())
          await sent(line, taster.subject, bytes, `${taster.login.name}-${count}`)
          waits.push(performance.now() - begun)
          count += 1
          await new Promise((go) => setTimeout(go, 40))
          begun = performance.now()
        } catch {
          // The server it was at is gone, or the others choose who leads: it goes on at another, under the same id.
          again += 1
          await line?.close().catch(() => undefined)
          line = null
          await new Promise((go) => setTimeout(go, 100))
        }
      }
      await line?.close()
      return { subject: taster.subject, waits, again }
    })
    await new Promise((go) => setTimeout(go, killedAfter * 60))
    const leader = servers.find(({ asked }) =>
      cluster?.leader?.endsWith(asked.beside?.own.replaceAll(/\W/g, '-') ?? 'none'),
    )
    if (!leader) throw new Error('nobody leads')
    alive.delete(leader)
    await leader.hub.messages.fall()
    console.log('its server is killed and stays away')
    const done = await Promise.all(all)
    await owner.close()
    const reader = await lineTo(alive, login)
    const manager = await jetstreamManager(reader)
    let [lost, disordered] = [0, 0]
    const { state } = await patient(() => manager.streams.info('B'))
    const counts = new Map<string, number[]>()
    for (let seq = 1; seq <= state.last_seq; seq += 1) {
      const message = await manager.streams.getMessage('B', { seq })
      if (!message) continue
      const count = new DataView(Uint8Array.from(message.data).buffer).getUint32(1)
      counts.set(message.subject, [...(counts.get(message.subject) ?? []), count])
    }
    for (const { subject } of done) {
      const kept = [...new Set(counts.get(subject))]
      lost += ballots - kept.length
      disordered += kept.filter((each, at) => at > 0 && each < (kept[at - 1] ?? 0)).length
    }
    const waits = done.flatMap((each) => each.waits).toSorted((a, b) => a - b)
    const again = done.reduce((sum, each) => sum + each.again, 0)
    console.log(
      `${senders * ballots} acknowledged, ${state.messages} kept, ${lost} lost, ${disordered} out of order, ${again} tries again`,
    )
    console.log(
      `acknowledged after ${shareOf(waits, 0.5).toFixed(1)} ms (median), ${shareOf(waits, 0.99).toFixed(0)} ms (99th of a hundred), the longest after ${((waits.at(-1) ?? 0) / 1000).toFixed(1)} s`,
    )
    await reader.close()
    return endsBy([
      { says: 'acknowledged ballots lost', was: lost, most: 0 },
      { says: 'ballots out of order', was: disordered, most: 0 },
      {
        says: 'seconds without an acknowledgement',
        was: (waits.at(-1) ?? Number.NaN) / 1000,
        most: 30,
      },
    ])
  } finally {
    for (const server of servers) await server.end()
  }
}

/** Three hubs that stand together: one set of keys, one password, a port of each for the others. */
async function three(): Promise<StartedHub[]> {
  const own = [await freePort(), await freePort(), await freePort()].map((p) => `127.0.0.1:${p}`)
  const password = crypto.randomUUID()
  const started: StartedHub[] = []
  for (const each of own) {
    const folder = mkdtempSync(join(tmpdir(), 'evenhand-hub-'))
    const [first] = started
    if (first) copyFileSync(join(first.asked.folder, 'keys.json'), join(folder, 'keys.json'))
    const others = own.filter((other) => other !== each)
    started.push(await startedHub({ folder, beside: { own: each, others, password } }))
  }
  return started
}

/** A connection to any of the servers that are there, as a name with three addresses leads to. */
function lineTo(alive: ReadonlySet<StartedHub>, login: Login): Promise<NatsConnection> {
  const servers = [...alive]
  const { code } = servers[Math.floor(Math.random() * servers.length)] ?? { code: null }
  if (!code) throw new Error('no server is left')
  return connectionFrom(new URL(code.page).origin, code.page.replace('http', 'ws'), login)
}

/** Tries for half a minute: servers that have just met choose who leads first. */
async function patient<T>(act: () => Promise<T>): Promise<T> {
  const until = Date.now() + 30_000
  for (;;) {
    try {
      return await act()
    } catch (failure) {
      if (Date.now() > until) throw failure
      await new Promise((go) => setTimeout(go, 200))
    }
  }
}
