import { headers, type NatsConnection } from '@nats-io/nats-core'
import { open, seal } from '@/table/envelope.ts'
import { inviteLogin, type Login, type Ticket } from '@/table/invite-login.ts'
import { keysOf, type PartKeys, secretOf } from '@/table/part-keys.ts'
import { newLogin } from '@/table/subjects.ts'
import { nowSeconds } from './running-hub.ts'

const table = 'QK7Z'
const master = Uint8Array.from({ length: 32 }, (_, at) => at)

/** A name for a login, by chance. */
export const loginName = () => newLogin(() => crypto.getRandomValues(new Uint32Array(1))[0] ?? 0)

/** A taster's device as far as a hub is concerned: its login, its keys and the subject it sends under. */
export interface TasterAtTable {
  login: Login
  subject: string
  keys: PartKeys
}

export async function tasterAt(ticket: Ticket): Promise<TasterAtTable> {
  const name = loginName()
  const login = inviteLogin(ticket, 'taster', { name, now: nowSeconds() })
  return { login, subject: `b.${name}`, keys: await keysOf(await secretOf(master, name)) }
}

/** A ballot of the size of a real one: what was asked of one piece, with the moment of sealing. Invented. */
export const sealedBallot = ({ keys, subject }: TasterAtTable, count: number, at: number) =>
  seal(
    keys.out,
    { table, subject, count },
    JSON.stringify({
      ...{ id: crypto.randomUUID(), at, code: `${100 + count}`, session: 's-1', flight: 1 },
      scores: { liking: 6.5, crumb: 4, chew: 7.2, salt: 5 },
      note: 'crust thin, crumb a little gummy at the rim',
    }),
  )

/** The moment that an arrived ballot was sealed, as its owner reads it. */
export async function sealedAt({ keys, subject }: TasterAtTable, bytes: Uint8Array) {
  const opened = await open(keys.out, { table, subject }, bytes)
  if (!opened.ok) throw new Error(opened.reason)
  return { count: opened.count, at: Number(JSON.parse(opened.text).at) }
}

/** Sends and waits for the hub's word; a message that carries the same id is taken once. */
export async function sent(
  line: NatsConnection,
  subject: string,
  bytes: Uint8Array,
  id: string,
): Promise<void> {
  const head = headers()
  head.set('Nats-Msg-Id', id)
  const answer = await line.request(subject, bytes, { timeout: 4000, headers: head })
  const { error } = answer.json<{ error?: { description: string } }>()
  if (error) throw new Error(error.description)
}

/** The value below which a share of the sorted ones lies. */
export const shareOf = (values: readonly number[], share: number): number =>
  values[Math.min(values.length - 1, Math.floor(values.length * share))] ?? Number.NaN

/** Says each bound that was missed; 1 where any was, else 0, as a command ends. */
export function endsBy(bounds: readonly { says: string; was: number; most: number }[]): 0 | 1 {
  // What was not measured at all is no figure within a bound.
  const missed = bounds.filter(({ was, most }) => !(was <= most))
  for (const { says, was, most } of missed) console.log(`MISSED: ${says} ${was}, at most ${most}`)
  return missed.length === 0 ? 0 : 1
}
