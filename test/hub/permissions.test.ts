import { jetstream, jetstreamManager } from '@nats-io/jetstream'
import { headers, type NatsConnection } from '@nats-io/nats-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { findServer } from '@/hub/find-server.ts'
import { troubleText } from '@/hub/hub-trouble.ts'
import { deskSubjects } from '@/table/desk-asks.ts'
import { mostEnvelopeBytes } from '@/table/envelope.ts'
import { inviteLogin } from '@/table/invite-login.ts'
import { askedUnder, noticeUnder } from '@/table/subjects.ts'
import { closeStreams, openStreams } from '@/table/table-streams.ts'
import { patience } from './patience.ts'
import { connectAs, joinAs, nowSeconds, type RunningHub, runHub } from './running-hub.ts'

const found = findServer()
if (!found)
  console.log(`The tests of the hub are passed over. ${troubleText({ reason: 'no-server' })}`)

let hub: RunningHub
let owner: NatsConnection
const names = { taster: 'EL7K2MQ9', other: 'AK4W8PTX', bench: 'BN3D6RSU' }

describe.skipIf(!found)('what a login may do at a real hub', () => {
  beforeAll(async () => {
    hub = await runHub()
    owner = await joinAs(hub.tickets[0], 'owner', 'OWNER222')
    await openStreams(owner)
  })
  afterAll(async () => {
    await owner?.close()
    await hub?.stop()
  })

  const counts = async (held = owner) => {
    const manager = await jetstreamManager(held)
    const all = await Promise.all(
      ['W', 'K', 'B', 'N'].map(async (name) => (await manager.streams.info(name)).state),
    )
    return all.map(({ messages, last_seq }) => [messages, last_seq])
  }
  const taken = async (at: NatsConnection, subject: string) => {
    const answer = await at.request(subject, 'x', { timeout: patience })
    return answer.json<{ stream?: string; seq?: number; error?: unknown }>()
  }

  test('each part sends under its own subject and hears its own notices, and no more', async () => {
    const [ticket] = hub.tickets
    const taster = await joinAs(ticket, 'taster', names.taster)
    const bench = await joinAs(ticket, 'bench', names.bench)
    expect(await taken(taster, `b.${names.taster}`)).toMatchObject({ stream: 'B', seq: 1 })
    expect(await taken(bench, `w.${names.bench}`)).toMatchObject({ stream: 'W', seq: 1 })
    const heard = taster.subscribe(`n.${names.taster}.*`, { max: 1 })
    await taster.flush()
    await owner.request(noticeUnder(names.taster, 0), 'for EL', { timeout: patience })
    for await (const message of heard) expect(message.string()).toBe('for EL')
    const kept = await taster.request(askedUnder(names.taster, 0), '', { timeout: patience })
    expect(kept.string()).toBe('for EL')
    await taster.close()
    await bench.close()
  })

  test('a taster’s login is refused every other subject, and no stream is changed by trying', async () => {
    const taster = await joinAs(hub.tickets[0], 'taster', names.taster)
    await owner.request(noticeUnder(names.other, 0), 'for AK alone', { timeout: patience })
    await owner.request(noticeUnder(names.taster, 0), 'for EL', { timeout: patience })
    const before = await counts()
    const refused: string[] = []
    void (async () => {
      for await (const status of taster.status())
        if (status.type === 'error') refused.push(String(status.error))
    })()
    const sends = [
      ...[`b.${names.other}`, `w.${names.taster}`, `w.${names.bench}`, `k.${names.taster}`],
      ...[noticeUnder(names.taster, 0), noticeUnder(names.other, 0), askedUnder(names.other, 0)],
      ...[`h.${names.other}`, `h.${names.bench}`, `k.${names.bench}`, `b.${names.taster}.0`, 'h.x'],
      ...[`_INBOX.${names.taster}.1`, `_INBOX.${names.other}.1`, `n.${names.bench}.1`, 'n.x'],
      ...['b.', 'x', '$SYS.REQ.SERVER.PING', '$SYS.REQ.CLAIMS.UPDATE', '_INBOX.OWNER222.1'],
      ...['INFO', 'STREAM.NAMES', 'STREAM.LIST', 'STREAM.CREATE.X'].map((api) => `$JS.API.${api}`),
      ...['INFO', 'PURGE', 'DELETE', 'UPDATE', 'SNAPSHOT', 'MSG.GET', 'MSG.DELETE'].flatMap((api) =>
        ['B', 'W', 'K', 'N'].map((name) => `$JS.API.STREAM.${api}.${name}`),
      ),
      ...[
        'CREATE.B',
        'CREATE.N',
        'CREATE.B.me',
        `CREATE.B.me.b.${names.other}`,
        'DURABLE.CREATE.B.me',
      ]
        .concat(['LIST.B', 'NAMES.B', 'INFO.B.owner', 'DELETE.B.owner', 'MSG.NEXT.B.owner'])
        .flatMap((api) =>
          ['B', 'W', 'K', 'N'].map(
            (name) => `$JS.API.CONSUMER.${api.replace(/(?<=\.)[BN](?=\.|$)/, name)}`,
          ),
        ),
      ...['DIRECT.GET.N', 'DIRECT.GET.B', `DIRECT.GET.B.b.${names.other}`, 'STREAM.RESTORE.X']
        .concat(['STREAM.LEADER.STEPDOWN.B', 'STREAM.PEER.REMOVE.B', 'META.LEADER.STEPDOWN'])
        .concat(['SERVER.REMOVE', 'ACCOUNT.PURGE.X', 'STREAM.TEMPLATE.CREATE.X'])
        .map((api) => `$JS.API.${api}`),
      ...['B', 'W', 'K'].map((name) => `$JS.ACK.${name}.owner.1.1.1.1.1`),
      ...['W', 'K', 'N'].map((name) => `$JS.API.DIRECT.GET.${name}.>`),
      ...[
        '$JS.FC.B',
        '_R_.X.Y',
        '_GR_.X',
        '$LDS.X',
        '$JSC.CI.X',
        '$NRG.V.X',
        '$KV.B.x',
        '$O.B.C.x',
      ],
      ...Object.values(deskSubjects),
    ]
    for (const subject of sends) taster.publish(subject, '{}')
    await taster.flush()
    const hears = ['>', 'b.>', 'w.*', 'n.>', noticeUnder(names.other, 0), '_INBOX.>', '$SYS.>', '*']
      .concat([`b.${names.taster}`, `_INBOX.${names.other}.>`, '_R_.>', '$JS.>', '$JS.EVENT.>'])
      .concat(['$JS.API.>', 'desk.>', 'k.*', 'h.*', `h.${names.taster}`, '_R_.*', '$KV.>'])
      .concat([`n.*.0`, `w.${names.bench}`, `_INBOX.${names.taster}*.>`])
    for (const subject of hears)
      taster.subscribe(subject, {
        callback: (failure, message) => {
          if (failure) refused.push(String(failure))
          else throw new Error(`heard ${message.subject}`)
        },
      })
    await taster.flush()
    await owner.request(noticeUnder(names.other, 0), 'once more for AK', { timeout: patience })
    await taster.flush()
    const told = (subject: string) => refused.some((line) => line.includes(`"${subject}"`))
    await expect.poll(() => [...sends, ...hears].filter((subject) => !told(subject))).toEqual([])
    // A group does not open what is closed to one.
    const groups = refused.length
    for (const subject of hears) taster.subscribe(subject, { queue: 'group', callback: () => {} })
    await taster.flush()
    await expect.poll(() => refused.length).toBe(groups + hears.length)
    const after = await counts()
    expect(after.slice(0, 3)).toEqual(before.slice(0, 3))
    await taster.close()
  })

  test('an allowed ballot that names a reply of the streams’ own does nothing to them', async () => {
    const [ticket] = hub.tickets
    const taster = await joinAs(ticket, 'taster', names.taster)
    const before = await counts()
    for (const reply of [
      '$JS.API.STREAM.PURGE.W',
      '$JS.API.STREAM.PURGE.B',
      '$JS.API.STREAM.DELETE.B',
      `w.${names.bench}`,
      `k.${names.taster}`,
      noticeUnder(names.other, 0),
    ])
      taster.publish(`b.${names.taster}`, '{"seq":99}', { reply })
    await taster.flush()
    await expect.poll(async () => (await counts())[2]).toEqual([7, 7])
    expect((await counts()).filter((_, at) => at !== 2)).toEqual(before.filter((_, at) => at !== 2))
    // What answers an ask that is allowed can be led to another's subject; it is in nobody's stream there, and opens for nobody.
    const atB = await counts()
    for (const reply of [`b.${names.other}`, `w.${names.bench}`, '$JS.API.STREAM.PURGE.B'])
      for (const subject of [askedUnder(names.taster, 0), `h.${names.taster}`])
        taster.publish(subject, '', { reply })
    await taster.request(askedUnder(names.taster, 0), '', { timeout: patience })
    expect(await counts()).toEqual(atB)
    // A body that asks for somebody else's piece gives nothing of it: the request names its own.
    const asked = await taster.request(
      askedUnder(names.taster, 0),
      JSON.stringify({ last_by_subj: noticeUnder(names.other, 0) }),
      { timeout: patience },
    )
    expect(asked.string()).not.toContain('AK')
    await taster.close()
  })

  test('a header that would sweep a stream, and what is over the size, are refused; the line of the second ends', async () => {
    const taster = await joinAs(hub.tickets[0], 'taster', names.taster)
    const before = await counts()
    for (const rollup of ['all', 'sub']) {
      const head = headers()
      head.set('Nats-Rollup', rollup)
      const answer = await taster.request(`b.${names.taster}`, 'x', {
        timeout: patience,
        headers: head,
      })
      expect(answer.json()).toMatchObject({ error: { description: 'rollup not permitted' } })
    }
    expect(await counts()).toEqual(before)
    // The library would hold it back: told that the hub takes more, it sends it.
    if (!taster.info) throw new Error('no word of the hub')
    taster.info.max_payload = 1_000_000
    const closed = taster.closed()
    taster.publish(`b.${names.taster}`, new Uint8Array(mostEnvelopeBytes + 1))
    expect(String(await closed)).toMatch(/payload/i)
    expect(await counts()).toEqual(before)
  })

  test('nobody comes in without a login, from a foreign page, past its time or with more than its part', async () => {
    const [ticket, otherTicket] = hub.tickets
    const good = inviteLogin(ticket, 'taster', { name: names.other, now: nowSeconds() })
    await expect(connectAs(ticket, good, 'http://elsewhere.test')).rejects.toThrow()
    await expect(connectAs(ticket, { ...good, claim: '' })).rejects.toThrow()
    const { seed } = inviteLogin(ticket, 'taster', { name: 'X', now: nowSeconds() })
    await expect(connectAs(ticket, { ...good, seed })).rejects.toThrow()
    const past = { name: names.other, now: nowSeconds() - 100, until: nowSeconds() - 50 }
    await expect(connectAs(ticket, inviteLogin(ticket, 'taster', past))).rejects.toThrow()
    const mixed = { ...ticket, accounts: { ...ticket.accounts, tasters: ticket.accounts.owner } }
    await expect(joinAs(mixed, 'taster', names.other)).rejects.toThrow()
    const elsewhere = { ...ticket, accounts: otherTicket.accounts }
    await expect(joinAs(elsewhere, 'taster', names.other)).rejects.toThrow()
  })

  test('what one table sends never reaches another table of the same hub', async () => {
    const [, otherTicket] = hub.tickets
    const otherOwner = await joinAs(otherTicket, 'owner', 'OWNER333')
    await openStreams(otherOwner)
    const before = await counts()
    const taster = await joinAs(otherTicket, 'taster', names.taster)
    await taken(taster, `b.${names.taster}`)
    expect((await counts(otherOwner))[2]).toEqual([1, 1])
    expect(await counts()).toEqual(before)
    await taster.close()
    await closeStreams(otherOwner)
    const manager = await jetstreamManager(otherOwner)
    expect(await manager.streams.names().next()).toEqual([])
    await otherOwner.close()
  })

  test('too much of one login is refused and leaves the others alone; what was taken outlasts a kill', async () => {
    const [ticket] = hub.tickets
    const [flood, other] = [
      await joinAs(ticket, 'taster', 'FLZZZZZZ'),
      await joinAs(ticket, 'taster', names.other),
    ]
    const answers = await Promise.all(Array.from({ length: 80 }, () => taken(flood, 'b.FLZZZZZZ')))
    expect(answers.filter(({ error }) => error === undefined)).toHaveLength(64)
    expect((await taken(other, `b.${names.other}`)).stream).toBe('B')
    await jetstream(owner).publish('w.BN3D6RSU', 'sealed', { msgID: 'BN3D6RSU-1' })
    const before = await counts()
    await hub.restart()
    owner = await joinAs(ticket, 'owner', 'OWNER222')
    expect(await counts()).toEqual(before)
    // What it said to have is there once, and a repeat is still known as one.
    const repeat = await jetstream(owner).publish('w.BN3D6RSU', 'sealed', { msgID: 'BN3D6RSU-1' })
    expect(repeat.duplicate).toBe(true)
    expect(await counts()).toEqual(before)
  })
})
