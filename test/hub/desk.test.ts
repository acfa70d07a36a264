import { jetstream, jetstreamManager } from '@nats-io/jetstream'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { findServer } from '@/hub/find-server.ts'
import { connectionFrom } from '@/hub/own-connection.ts'
import { keyOfSeed, signedClaim } from '@/table/claims.ts'
import { deskSubjects } from '@/table/desk-asks.ts'
import { closeAtHub, openTable, revokeAtHub, userOf } from '@/table/hub-desk.ts'
import { inviteLogin, type Ticket } from '@/table/invite-login.ts'
import type { Part } from '@/table/subjects.ts'
import { closeStreams, openStreams } from '@/table/table-streams.ts'
import { patience } from './patience.ts'
import { nowSeconds } from './running-hub.ts'
import { type StartedHub, startedHub } from './started-hub.ts'

let at: StartedHub
const opened = async (): Promise<Ticket> => {
  const answer = await openTable(at.connect, at.code, nowSeconds())
  if (!answer.ok) throw new Error(answer.reason)
  return answer.ticket
}
const loginOf = (ticket: Ticket, part: 'owner' | Part, name: string) =>
  inviteLogin(ticket, part, { name, now: nowSeconds() })
const join = (ticket: Ticket, part: 'owner' | Part, name: string) =>
  at.connect(ticket.address, loginOf(ticket, part, name))

describe.skipIf(!findServer())('a table at a hub', () => {
  beforeAll(async () => {
    at = await startedHub()
  })
  afterAll(async () => {
    await at?.end()
  })

  test('opens from the owner’s device by the hub’s code, takes a ballot, and closes with nothing left', async () => {
    const ticket = await opened()
    expect(ticket).toMatchObject({ page: at.code.page, replicas: 1 })
    const owner = await join(ticket, 'owner', 'OWNER222')
    await openStreams(owner, ticket.replicas)
    const taster = await join(ticket, 'taster', 'EL7K2MQ9')
    const taken = await taster.request('b.EL7K2MQ9', 'sealed', { timeout: patience })
    expect(taken.json()).toMatchObject({ stream: 'B', seq: 1 })
    expect(await at.hub.tables()).toBe(1)
    await closeStreams(owner)
    expect(await closeAtHub(at.connect, at.code, ticket, nowSeconds())).toEqual({ ok: true })
    expect(await at.hub.tables()).toBe(0)
    await expect(join(ticket, 'taster', 'EL7K2MQ9')).rejects.toThrow()
    await expect(join(ticket, 'owner', 'OWNER222')).rejects.toThrow()
    await Promise.all([owner.close(), taster.close()])
  })

  test('lets a revoked login in no more and cuts it off, while the others stay and a new code works', async () => {
    const ticket = await opened()
    const lost = loginOf(ticket, 'taster', 'EL7K2MQ9')
    const [gone, other, bench] = [
      await at.connect(ticket.address, lost),
      await join(ticket, 'taster', 'AK4W8PTX'),
      await join(ticket, 'bench', 'BN3D6RSU'),
    ]
    const ask = { user: userOf(lost), taster: true }
    expect(await revokeAtHub(at.connect, at.code, ticket, nowSeconds(), ask)).toEqual({ ok: true })
    await gone.closed()
    await expect(at.connect(ticket.address, lost)).rejects.toThrow()
    await Promise.all([other.flush(), bench.flush()])
    const anew = await join(ticket, 'taster', 'EL7K2MQ9')
    await anew.flush()
    expect(await closeAtHub(at.connect, at.code, ticket, nowSeconds())).toEqual({ ok: true })
    await Promise.all([anew, other, bench].map((each) => each.close()))
  })

  test('holds no more tables than it may; does for the owner of one nothing to another, for an old signature or junk nothing', async () => {
    const [mine, other] = [await opened(), await opened()]
    const mixed = { ...other, seeds: mine.seeds }
    const no = (reason: string) => ({ ok: false, reason })
    expect(await openTable(at.connect, at.code, nowSeconds())).toEqual(no('full'))
    const close = (ticket: Ticket) => closeAtHub(at.connect, at.code, ticket, nowSeconds())
    expect(await close(mixed)).toEqual(no('not-yours'))
    const line = await at.connect(other.address, loginFor('desk'))
    const { owner } = mine.accounts
    const old = signedClaim(
      { name: 'ask', subject: owner, issuedAt: nowSeconds() - 1000, says: { ask: 'close', owner } },
      keyOfSeed(mine.seeds.owner),
    )
    const late = await line.request(deskSubjects.owners, old, { timeout: patience })
    expect(late.json()).toEqual(no('not-yours'))
    for (const junk of ['', '{}', 'a.b.c', JSON.stringify({ accounts: other.accounts })])
      for (const subject of Object.values(deskSubjects)) {
        const answer = await line.request(subject, junk, { timeout: patience })
        expect(answer.json()).toEqual(no('not-understood'))
      }
    // An account that is there already, the hub's own among them, is not given new keys.
    const taken = await line.request(
      deskSubjects.open,
      JSON.stringify({
        accounts: { ...mine.accounts, owner: at.code.account },
        signers: Object.fromEntries(
          ['owner', 'bench', 'oven', 'key', 'taster', 'watch'].map((part) => [
            part,
            mine.accounts.owner,
          ]),
        ),
      }),
      { timeout: patience },
    )
    expect(taken.json()).toEqual(no('taken'))
    await line.close()
    expect(await at.hub.tables()).toBe(2)
    for (const ticket of [mine, other]) expect(await close(ticket)).toEqual({ ok: true })
  })

  test('a code with a changed sign, another’s page and a login of a table reach no desk', async () => {
    const changed = {
      ...at.code,
      seed: at.code.seed.replace(/(?<=^.{20})./, (sign) => (sign === 'A' ? 'B' : 'A')),
    }
    await expect(openTable(at.connect, changed, nowSeconds())).rejects.toThrow()
    const foreign = (address: string, login: Parameters<typeof at.connect>[1]) =>
      connectionFrom('http://elsewhere.test', address, login)
    await expect(openTable(foreign, at.code, nowSeconds())).rejects.toThrow()
    const line = await at.connect(at.code.page.replace('http', 'ws'), loginFor('desk'))
    const refused = new Promise((done) => {
      line.subscribe('desk.>', { callback: (failure) => done(String(failure)) })
    })
    expect(await refused).toContain('Permissions Violation')
    await line.close()
  })

  test('outlasts a stop and a kill of its message server with all that it took', async () => {
    const ticket = await opened()
    const owner = await join(ticket, 'owner', 'OWNER222')
    await openStreams(owner)
    await jetstream(owner).publish('w.BN3D6RSU', 'one')
    await at.hub.messages.kill()
    const again = await join(ticket, 'owner', 'OWNER222')
    const { state } = await (await jetstreamManager(again)).streams.info('W')
    expect(state.messages).toBe(1)
    // The desk is back at the server as well, by itself.
    await expect.poll(async () => at.hub.tables().catch(() => -1), { timeout: patience }).toBe(1)
    await closeStreams(again)
    await again.close()
    expect(await closeAtHub(at.connect, at.code, ticket, nowSeconds())).toEqual({ ok: true })
  })
})

/** A login as the code of the hub gives it. */
function loginFor(name: string) {
  const { account, seed } = at.code
  const seeds = { owner: seed, bench: seed, oven: seed, key: seed, taster: seed, watch: seed }
  const accounts = { owner: account, work: account, tasters: account }
  const ticket = { ...{ address: '', page: '', replicas: 1 }, accounts, seeds }
  return inviteLogin(ticket, 'bench', { name, now: nowSeconds() })
}
