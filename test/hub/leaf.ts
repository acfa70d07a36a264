import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { jetstreamManager } from '@nats-io/jetstream'
import type { NatsConnection } from '@nats-io/nats-core'
import { createAccount, type KeyPair } from '@nats-io/nkeys'
import { configurationOf } from '@/hub/configuration.ts'
import { findServer } from '@/hub/find-server.ts'
import { freePort } from '@/hub/free-port.ts'
import { kitchenClaims, ownLogin } from '@/hub/kitchen-claims.ts'
import { kitchenKeys } from '@/hub/kitchen-keys.ts'
import { type MessageServer, messageServer } from '@/hub/message-server.ts'
import { tableClaims } from '@/hub/table-accounts.ts'
import { signedClaim } from '@/table/claims.ts'
import type { Ticket } from '@/table/invite-login.ts'
import { newTable } from '@/table/new-table.ts'
import { openStreams } from '@/table/table-streams.ts'
import { endsBy, loginName, sealedBallot, sent, tasterAt } from './at-table.ts'
import { type CutLink, cutLink } from './cut-link.ts'
import { connectAs, joinAs, nowSeconds } from './running-hub.ts'

/** A login waits with 64 at most. */
const [before, away] = [10, 50]
const names = ['kitchen-a', 'kitchen-b'] as const

/**
 * `npm run hub:leaf`: the message servers of two kitchens linked as leaves to that of a school, which keeps a copy of each table's
 * ballots. One link is cut for good while both kitchens go on, then mended. Exits with 1 where a copy lacks anything or holds what
 * is another kitchen's, or where a kitchen waited for the school.
 */
export async function run(): Promise<number> {
  const school = await schoolOf(names.map(() => createAccount()))
  const kitchens: Kitchen[] = []
  try {
    for (const [at, name] of names.entries()) kitchens.push(await kitchenAt(school, at, name))
    const [cut, other] = kitchens
    if (!cut || !other) throw new Error('two kitchens')
    for (const kitchen of kitchens) await casts(kitchen, 1, before)
    for (const kitchen of kitchens) await copied(kitchen, before)
    cut.link.cut()
    const waits = await casts(cut, before + 1, before + away)
    await casts(other, before + 1, before + away)
    await copied(other, before + away)
    const meanwhile = await copyOf(cut)
    cut.link.mend()
    const mended = performance.now()
    await copied(cut, before + away)
    const back = performance.now() - mended
    console.log(
      `link cut: ${away} acknowledged in the kitchen in ${waits.toFixed(0)} ms, ${meanwhile.length} at the school; the other kitchen's ${(await copyOf(other)).length} all there`,
    )
    const copies = await Promise.all(kitchens.map(copyOf))
    const lost = kitchens.map(({ subject }, at) => lackOf(copies[at] ?? [], subject))
    console.log(
      `link back: ${copies[0]?.length} at the school after ${(back / 1000).toFixed(1)} s, ${lost.join(' and ')} lost`,
    )
    return endsBy([
      { says: 'ballots lost of the first kitchen', was: lost[0] ?? Number.NaN, most: 0 },
      { says: 'ballots lost of the second', was: lost[1] ?? Number.NaN, most: 0 },
      { says: 'ballots that came over a cut link', was: meanwhile.length - before, most: 0 },
      { says: 'ms of a kitchen without the school', was: waits, most: 5000 },
      { says: 'ms until the copy was whole', was: back, most: 20_000 },
    ])
  } finally {
    for (const { end } of kitchens) await end()
    await school.end()
  }
}

interface School {
  leafPort: number
  accounts: readonly KeyPair[]
  lineTo: (account: KeyPair) => Promise<NatsConnection>
  end: () => Promise<void>
}

interface Kitchen {
  name: string
  ticket: Ticket
  subject: string
  link: CutLink
  cast: (count: number) => Promise<void>
  /** The school's line to the account that keeps this kitchen's copy. */
  atSchool: NatsConnection
  end: () => Promise<void>
}

const unlimited = { subs: -1, data: -1, payload: -1, imports: -1, exports: -1, wildcards: true }

/** A server with an account for each kitchen, so that none reaches another's copy. */
async function schoolOf(accounts: readonly KeyPair[]): Promise<School> {
  const leafPort = await freePort()
  const { keys, ticketAt, start } = await serverOf('school')
  const storage = { mem_storage: 0, disk_storage: 64 * 1024 * 1024, streams: 4, consumer: 16 }
  const says = { type: 'account', limits: { ...unlimited, ...storage, conn: 4, leaf: 1 } }
  const claims = accounts.map((key, at) => {
    const [name, subject] = [names[at] ?? '', key.getPublicKey()]
    return {
      account: subject,
      claim: signedClaim({ name, subject, issuedAt: nowSeconds(), says }, keys.operator),
    }
  })
  const { end } = await start(
    claims,
    `leafnodes { listen: "127.0.0.1:${leafPort}", no_advertise: true }\n`,
  )
  const lineTo = (account: KeyPair) =>
    connectAs(ticketAt, ownLogin(account, loginName(), nowSeconds()))
  return { leafPort, accounts, lineTo, end }
}

async function kitchenAt(school: School, at: number, name: string): Promise<Kitchen> {
  const account = school.accounts[at]
  if (!account) throw new Error('no account at the school')
  const { keys, ticketAt, start, folder } = await serverOf(name)
  const { keys: told, seeds } = newTable()
  const ticket: Ticket = { ...ticketAt, accounts: told.accounts, seeds }
  const link = await cutLink(school.leafPort)
  const { claim, seed } = ownLogin(account, name, nowSeconds())
  const credentials = join(folder, 'school.creds')
  writeFileSync(credentials, credentialsOf(claim, seed), { mode: 0o600 })
  const { end } = await start(
    tableClaims(keys.operator, told, nowSeconds(), 1, 1),
    `leafnodes {
  reconnect: 1
  remotes: [{ url: "nats-leaf://127.0.0.1:${link.port}", account: ${told.accounts.owner}, credentials: ${JSON.stringify(credentials)} }]
}
`,
  )
  const owner = await joinAs(ticket, 'owner', loginName())
  await openStreams(owner)
  const taster = await tasterAt(ticket)
  const line = await connectAs(ticket, taster.login)
  const atSchool = await school.lineTo(account)
  await keepsCopy(atSchool, name)
  return {
    ...{ name, ticket, subject: taster.subject, link, atSchool },
    cast: async (count) =>
      sent(
        line,
        taster.subject,
        await sealedBallot(taster, count, 0),
        `${taster.subject}-${count}`,
      ),
    end: async () => {
      for (const each of [owner, line, atSchool]) await each.close()
      await end()
      await link.close()
    },
  }
}

/** The school keeps of a kitchen what its ballots' stream holds, whenever the link is there. */
async function keepsCopy(line: NatsConnection, name: string): Promise<void> {
  const manager = await jetstreamManager(line)
  await manager.streams.add({
    ...{ name: 'COPY', max_bytes: 16 * 1024 * 1024 },
    sources: [{ name: 'B', external: { api: `$JS.${name}.API`, deliver: `copies.${name}` } }],
  })
}

async function copyOf({ atSchool }: Kitchen): Promise<{ subject: string; count: number }[]> {
  const manager = await jetstreamManager(atSchool)
  const { state } = await manager.streams.info('COPY')
  const copies: { subject: string; count: number }[] = []
  for (let seq = Math.max(1, state.first_seq); seq <= state.last_seq; seq += 1) {
    const message = await manager.streams.getMessage('COPY', { seq })
    if (!message) continue
    const count = new DataView(Uint8Array.from(message.data).buffer).getUint32(1)
    copies.push({ subject: message.subject, count })
  }
  return copies
}

/** How many ballots of a kitchen its copy lacks; what is another's or twice counts too. */
function lackOf(copies: readonly { subject: string; count: number }[], subject: string): number {
  const own = new Set(copies.flatMap((each) => (each.subject === subject ? [each.count] : [])))
  return before + away - own.size + (copies.length - own.size)
}

/** Waits at most half a minute until the school holds so many of a kitchen. */
async function copied(kitchen: Kitchen, wanted: number): Promise<void> {
  const until = Date.now() + 30_000
  const manager = await jetstreamManager(kitchen.atSchool)
  while (Date.now() < until) {
    const { state } = await manager.streams.info('COPY')
    if (state.messages >= wanted) return
    await new Promise((go) => setTimeout(go, 50))
  }
}

/** Casts ballots one after another, each until the kitchen's own server has it; gives how long that took. */
async function casts({ cast }: Kitchen, from: number, to: number): Promise<number> {
  const begun = performance.now()
  for (let count = from; count <= to; count += 1) await cast(count)
  return performance.now() - begun
}

/** A message server with keys of its own, in a folder of its own, not started yet. `name` is the domain of its streams. */
async function serverOf(name: string) {
  const folder = mkdtempSync(join(tmpdir(), 'evenhand-leaf-'))
  const program = findServer()
  const read = kitchenKeys(folder)
  if (!program || !read.ok) throw new Error('no message server, or no keys')
  const { keys } = read
  const [port, ownPort] = [await freePort(), await freePort()]
  const address = `ws://127.0.0.1:${port}/`
  const noAccounts = { owner: '', work: '', tasters: '' }
  const ticketAt = { address, page: address, replicas: 1, accounts: noAccounts, seeds: none }
  const start = async (
    more: ReturnType<typeof tableClaims>,
    leaves: string,
  ): Promise<MessageServer & { end: () => Promise<void> }> => {
    const own = kitchenClaims(keys, nowSeconds())
    const text = configurationOf(
      { ...{ server: name, port, ownPort, folder, mostTables: 2, beside: null }, origin },
      { ...own, claims: [...own.claims, ...more] },
    )
    const file = join(folder, 'hub.conf')
    writeFileSync(file, text.replace('jetstream {', `jetstream { domain: ${name},`) + leaves)
    const running = await messageServer(program.path, file, {
      again: () => undefined,
      gone: (why) => console.error(`${name}: ${why}`),
    })
    const end = async () => {
      await running.stop()
      rmSync(folder, { recursive: true, force: true })
    }
    return { ...running, end }
  }
  return { keys, folder, ticketAt, start }
}

const origin = 'http://evenhand.test'
const none = { owner: '', bench: '', oven: '', key: '', taster: '', watch: '' }

/** A login as the message server reads it from a file (its own documentation's form, from memory; tried). */
const credentialsOf = (claim: string, seed: string) =>
  `-----BEGIN NATS USER JWT-----\n${claim}\n------END NATS USER JWT------\n\n-----BEGIN USER NKEY SEED-----\n${seed}\n------END USER NKEY SEED------\n`
