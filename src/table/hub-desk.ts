import type { NatsConnection } from '@nats-io/nats-core'
import { createUser } from '@nats-io/nkeys'
import { keyOfSeed, seedOf, signedClaim } from './claims.ts'
import {
  type DeskAnswer,
  type DeskRefusal,
  deskAnswerShape,
  deskSubjects,
  type OwnersAsk,
} from './desk-asks.ts'
import { type HubCode, messagesAt } from './hub-code.ts'
import type { Login, Ticket } from './invite-login.ts'
import { newTable } from './new-table.ts'
import { newLogin } from './subjects.ts'

/** Opens a connection as a login, by WebSocket; it rejects where the hub is not there or does not let in. */
export type Connect = (address: string, login: Login) => Promise<NatsConnection>

export type Asked = { ok: true } | { ok: false; reason: DeskRefusal | 'no-answer' }

const patienceMilliseconds = 8000

/** Asks a hub for a new table. `now` in seconds since 1970. Rejects where no connection comes about. */
export async function openTable(
  connect: Connect,
  code: HubCode,
  now: number,
): Promise<{ ok: true; ticket: Ticket } | { ok: false; reason: DeskRefusal | 'no-answer' }> {
  const { keys, seeds } = newTable()
  const answer = await askedOf(connect, code, now, deskSubjects.open, JSON.stringify(keys))
  if (!answer.ok) return answer
  const { page, replicas } = answer
  const address = messagesAt(code.page)
  const ticket = { address, page, replicas, accounts: keys.accounts, seeds }
  return { ok: true, ticket }
}

/** Has the hub forget the accounts of a table, after its streams were removed: nobody gets in any more. */
export const closeAtHub = (connect: Connect, code: HubCode, ticket: Ticket, now: number) =>
  askedByOwner(connect, code, ticket, now, { ask: 'close', owner: ticket.accounts.owner })

/** Has the hub let in a login no more, and cut it off where it is connected. The others notice nothing. */
export const revokeAtHub = (
  connect: Connect,
  code: HubCode,
  ticket: Ticket,
  now: number,
  { user, taster }: { user: string; taster: boolean },
) =>
  askedByOwner(connect, code, ticket, now, {
    ...{ ask: 'revoke', owner: ticket.accounts.owner, user },
    from: taster ? 'tasters' : 'work',
  })

/** The public key of a login, by which it is revoked. */
export const userOf = ({ seed }: Login): string => keyOfSeed(seed).getPublicKey()

async function askedByOwner(
  connect: Connect,
  code: HubCode,
  { accounts, seeds }: Ticket,
  now: number,
  ask: OwnersAsk,
): Promise<Asked> {
  const signed = signedClaim(
    { name: 'ask', subject: accounts.owner, issuedAt: now, says: { type: 'generic', ...ask } },
    keyOfSeed(seeds.owner),
  )
  const answer = await askedOf(connect, code, now, deskSubjects.owners, signed)
  return answer.ok ? { ok: true } : answer
}

async function askedOf(
  connect: Connect,
  code: HubCode,
  now: number,
  subject: string,
  body: string,
): Promise<DeskAnswer | { ok: false; reason: 'no-answer' }> {
  const connection = await connect(messagesAt(code.page), deskLogin(code, now))
  try {
    const message = await connection.request(subject, body, { timeout: patienceMilliseconds })
    const read = deskAnswerShape.safeParse(JSON.parse(message.string()))
    return read.success ? read.data : { ok: false, reason: 'no-answer' }
  } catch {
    // Nobody answered in time, or the line was cut: asked again it is asked anew.
    return { ok: false, reason: 'no-answer' }
  } finally {
    await connection.close()
  }
}

/** A login for one visit to the desk, signed by the key of the hub's code. */
function deskLogin({ account, seed }: HubCode, now: number): Login {
  const user = createUser()
  const name = newLogin(() => crypto.getRandomValues(new Uint32Array(1))[0] ?? 0)
  const says = { type: 'user', issuer_account: account, pub: {}, sub: {} }
  const claim = signedClaim(
    { name, subject: user.getPublicKey(), issuedAt: now, expiresAt: now + 600, says },
    keyOfSeed(seed),
  )
  return { name, claim, seed: seedOf(user) }
}
