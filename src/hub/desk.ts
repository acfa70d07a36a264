import type { KeyPair } from '@nats-io/nkeys'
import * as z from 'zod/mini'
import { signedClaim } from '@/table/claims.ts'
import {
  type DeskAnswer,
  type DeskRefusal,
  type OwnersAsk,
  ownersAskShape,
  tableKeysShape,
} from '@/table/desk-asks.ts'
import type { AccountsAtServer } from './accounts-at-server.ts'
import { readClaim } from './read-claim.ts'
import { tableClaims } from './table-accounts.ts'

export interface Desk {
  operator: KeyPair
  server: AccountsAtServer
  /** Address of the app beside the hub, which guests open. */
  page: string
  replicas: number
  mostTables: number
  /** Seconds since 1970. */
  now: () => number
}

/** Accounts of the hub itself: that of the server and the desk's. */
const ownAccounts = 2
const accountsOfTable = 3
/** How old a signature may be: clocks of devices differ. */
const freshSeconds = 300

const ownersClaimShape = z.object({
  signing_keys: z.array(z.string()),
  guests: z.object({ work: z.string(), tasters: z.string() }),
})

const no = (reason: DeskRefusal): DeskAnswer => ({ ok: false, reason })

/** Opens a table: takes its three accounts, new ones alone, so that no claim can be put in the place of another's. */
export async function openAsked(desk: Desk, body: string): Promise<DeskAnswer> {
  const read = tableKeysShape.safeParse(jsonOf(body))
  if (!read.success) return no('not-understood')
  const asked = Object.values(read.data.accounts)
  const there = await desk.server.list()
  if (new Set(asked).size < asked.length || asked.some((each) => there.includes(each)))
    return no('taken')
  if (tablesAmong(there) >= desk.mostTables) return no('full')
  for (const { claim } of tableClaims(desk.operator, read.data, desk.now(), desk.replicas))
    if (!(await desk.server.keep(claim))) {
      await desk.server.remove(asked, desk.now())
      return no('hub-failed')
    }
  return { ok: true, page: desk.page, replicas: desk.replicas }
}

export const tablesAmong = (accounts: readonly string[]): number =>
  Math.floor((accounts.length - ownAccounts) / accountsOfTable)

/** Does what the owner of a table asks with the owner's own key: closes it, or lets in a login no more. */
export async function ownersAsked(desk: Desk, body: string): Promise<DeskAnswer> {
  const signed = readClaim(body)
  if (!signed) return no('not-understood')
  const { type: _, version: __, ...says } = signed.says
  const read = ownersAskShape.safeParse(says)
  if (!read.success) return no('not-understood')
  const ask = read.data
  const table = await tableOf(desk, ask.owner)
  const fresh = Math.abs(desk.now() - signed.issuedAt) <= freshSeconds
  if (!table?.signing_keys.includes(signed.issuer) || !fresh) return no('not-yours')
  const done = await (ask.ask === 'close'
    ? desk.server.remove([...Object.values(table.guests), ask.owner], desk.now())
    : revoked(desk, table.guests[ask.from], ask))
  return done ? { ok: true, page: desk.page, replicas: desk.replicas } : no('hub-failed')
}

async function tableOf({ server }: Desk, owner: string) {
  if (!(await server.list()).includes(owner)) return null
  const read = ownersClaimShape.safeParse((await server.claimOf(owner))?.says)
  return read.success ? read.data : null
}

/** Signs the account anew with one login more that is let in no more. The server cuts it off, the others stay connected. */
async function revoked(
  { server, operator, now }: Desk,
  account: string,
  { user }: Extract<OwnersAsk, { ask: 'revoke' }>,
): Promise<boolean> {
  const claim = await server.claimOf(account)
  if (!claim) return false
  const before = Object(claim.says.revocations)
  const says = { ...claim.says, revocations: { ...before, [user]: now() } }
  return await server.keep(
    signedClaim({ name: account.slice(0, 8), subject: account, issuedAt: now(), says }, operator),
  )
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    // No JSON is not understood, as any other shape that is not asked for.
    return undefined
  }
}
