import { jetstreamManager } from '@nats-io/jetstream'
import type { NatsConnection } from '@nats-io/nats-core'
import { openTable } from '@/table/hub-desk.ts'
import type { Ticket } from '@/table/invite-login.ts'
import { inviteLogin } from '@/table/invite-login.ts'
import { openStreams } from '@/table/table-streams.ts'
import { endsBy, loginName, sealedBallot, sent, shareOf, tasterAt } from './at-table.ts'
import { nowSeconds } from './running-hub.ts'
import { type StartedHub, startedHub } from './started-hub.ts'

const [kills, senders, ballots] = [50, 3, 40]

/**
 * `npm run hub:kill`: kills the message server at a moment by chance, fifty times, while three devices send; each goes on where it
 * was not answered. Exits with 1 where anything acknowledged is missing, twice or out of order, or
 * where it took more than ten seconds until one was answered again.
 */
export async function run(): Promise<number> {
  const at = await startedHub({ mostTables: 1 })
  try {
    const answer = await openTable(at.connect, at.code, nowSeconds())
    if (!answer.ok) throw new Error(answer.reason)
    const { ticket } = answer
    const owner = await ownerOf(at, ticket)
    await openStreams(owner)
    await owner.close()
    let [acknowledged, sentAgain, lost, twice, disordered] = [0, 0, 0, 0, 0]
    const waits: number[] = []
    for (let round = 0; round < kills; round += 1) {
      const done = Promise.all(Array.from({ length: senders }, () => sending(at, ticket)))
      await new Promise((go) => setTimeout(go, 150 + Math.random() * 250))
      const killed = performance.now()
      await at.hub.messages.kill()
      for (const sender of await done) {
        const kept = await keptUnder(at, ticket, sender.subject)
        const missing = sender.acknowledged.filter((id) => !kept.includes(id))
        acknowledged += sender.acknowledged.length
        sentAgain += sender.again
        lost += missing.length
        twice += kept.length - new Set(kept).size
        disordered += kept.filter((id, place) => place > 0 && id < (kept[place - 1] ?? 0)).length
        if (sender.backAt !== null) waits.push(sender.backAt - killed)
      }
    }
    waits.sort((a, b) => a - b)
    console.log(
      `${kills} kills: ${acknowledged} acknowledged, ${lost} lost, ${twice} twice, ${disordered} out of order, ${sentAgain} sent again`,
    )
    console.log(
      `acknowledged again after ${shareOf(waits, 0.5).toFixed(0)} ms (median), ${shareOf(waits, 0.99).toFixed(0)} ms (99th of a hundred), ${Math.max(...waits).toFixed(0)} ms at most`,
    )
    return endsBy([
      { says: 'acknowledged ballots lost', was: lost, most: 0 },
      { says: 'ballots kept twice', was: twice, most: 0 },
      { says: 'ballots out of order', was: disordered, most: 0 },
      { says: 'ms until acknowledged again', was: waits.at(-1) ?? Number.NaN, most: 10_000 },
    ])
  } finally {
    await at.end()
  }
}

interface Sender {
  subject: string
  /** Counts of the ballots that the hub said to have. */
  acknowledged: number[]
  again: number
  /** When it was first answered after the line was cut. */
  backAt: number | null
}

/** Sends ballots one after another, each until the hub says that it has it, over as many connections as that takes. */
async function sending(at: StartedHub, ticket: Ticket): Promise<Sender> {
  const taster = await tasterAt(ticket)
  const sender: Sender = { subject: taster.subject, acknowledged: [], again: 0, backAt: null }
  let line: NatsConnection | null = null
  for (let count = 1; count <= ballots; ) {
    try {
      line ??= await at.connect(ticket.address, taster.login)
      const bytes = await sealedBallot(taster, count, performance.now())
      await sent(line, taster.subject, bytes, `${taster.login.name}-${count}`)
      sender.acknowledged.push(count)
      if (sender.again > 0) sender.backAt ??= performance.now()
      count += 1
    } catch {
      // Cut off, or not there yet: the same ballot goes out again under the same id.
      sender.again += 1
      await line?.close().catch(() => undefined)
      line = null
      await new Promise((go) => setTimeout(go, 30))
    }
  }
  await line?.close()
  return sender
}

const ownerOf = (at: StartedHub, ticket: Ticket) =>
  at.connect(ticket.address, inviteLogin(ticket, 'owner', { name: loginName(), now: nowSeconds() }))

/** The counts of the ballots that the hub keeps of one login, in their order, as the outside of each envelope says them. */
async function keptUnder(at: StartedHub, ticket: Ticket, subject: string): Promise<number[]> {
  const owner = await ownerOf(at, ticket)
  const manager = await jetstreamManager(owner)
  const { state } = await manager.streams.info('B', { subjects_filter: subject })
  const counts: number[] = []
  for (let seq = state.first_seq; seq <= state.last_seq; seq += 1) {
    const message = await manager.streams.getMessage('B', { seq })
    if (message?.subject === subject)
      counts.push(new DataView(Uint8Array.from(message.data).buffer).getUint32(1))
  }
  await manager.streams.purge('B', { filter: subject })
  await owner.close()
  return counts
}
