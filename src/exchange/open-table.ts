import { noReceipt } from '@/core/table/receipt.ts'
import type { HubCode } from '@/table/hub-code.ts'
import { type Invitation, invitationLink } from '@/table/invitation.ts'
import { inviteLogin, type Ticket } from '@/table/invite-login.ts'
import { secretOf } from '@/table/part-keys.ts'
import { newLogin, type Part } from '@/table/subjects.ts'
import type { TableServices } from './services.ts'
import type { Invited, OwnTable } from './table-store.ts'

type Opening = Pick<TableServices, 'store' | 'now' | 'draw'>

const secondsOf = (milliseconds: number) => Math.floor(milliseconds / 1000)

/** Logins of guests hold for so long: a day and a half, so that nobody is cut off at midnight. */
const guestSeconds = 36 * 3600

/** Keeps a table that a hub has given a ticket for. The master secret is drawn here and leaves this device never. */
export async function keepOwnTable(
  { store, now, draw }: Opening,
  trialId: string,
  ticket: Ticket,
  hub: HubCode,
): Promise<OwnTable> {
  const own: OwnTable = {
    ...{ trialId, ticket, hub, table: newLogin(draw), invited: [], openedAt: now() },
    owner: inviteLogin(ticket, 'owner', { name: newLogin(draw), now: secondsOf(now()) }),
    master: crypto.getRandomValues(new Uint8Array(32)),
  }
  await store.transaction('rw', store.own, store.counts, store.heard, async () => {
    await store.own.put(own)
    await store.counts.put({ trialId, notices: 0, foreign: 0, repeated: 0 })
    await store.heard.where({ trialId }).delete()
  })
  return own
}

/** Lets one more device in: a login of its own for a part, of a taster their own. Without `sealed` nothing it says is sealed. */
export async function invite(
  { store, now, draw }: Opening,
  trialId: string,
  { part, tasterId, sealed }: { part: Part; tasterId: string | null; sealed: boolean },
): Promise<Invited> {
  const own = await store.own.get(trialId)
  if (!own) throw new Error('no table is open for this trial')
  const name = newLogin(draw)
  const from = secondsOf(now())
  const invited: Invited = {
    ...{ part, tasterId, madeAt: now(), revokedAt: null },
    login: inviteLogin(own.ticket, part, { name, now: from, until: from + guestSeconds }),
    secret: sealed ? await secretOf(own.master, name) : null,
  }
  await store.own
    .where('trialId')
    .equals(trialId)
    .modify((kept) => {
      kept.invited.push(invited)
    })
  return invited
}

/** The link that brings a device to the table. */
export function linkOf({ ticket, table }: OwnTable, { part, login, secret }: Invited): string {
  return invitationLink(ticket.page, { part, table, login, secret })
}

/** From now on nothing of a login is taken in. That the hub lets it in no more is asked of the hub besides. */
export async function revoke(
  { store, now }: Opening,
  trialId: string,
  login: string,
): Promise<void> {
  await store.own
    .where('trialId')
    .equals(trialId)
    .modify((kept) => {
      for (const each of kept.invited) if (each.login.name === login) each.revokedAt ??= now()
    })
}

/** Keeps a table that this device was invited to. The same again goes on where it was. */
export async function keepJoinedTable(
  { store, now, draw }: Opening,
  page: string,
  text: string,
  { table, part }: Pick<Invitation, 'table' | 'part'>,
): Promise<void> {
  await store.transaction('rw', store.joined, store.waiting, async () => {
    const known = await store.joined.get(table)
    if (known?.invitation === text) return
    const fresh = {
      ...{ table, invitation: text, page, part, seat: newLogin(draw), joinedAt: now() },
      ...{ receipt: noReceipt, notices: {}, notice: null },
      ...{ ownerHeardAt: null, trialId: known?.trialId ?? null, putOut: known?.putOut ?? 0 },
    }
    const planBase = known?.planBase ? { planBase: known.planBase } : {}
    // Another code of the same table: what waits goes out under it, counted anew.
    const rows = await store.waiting.where({ table }).sortBy('count')
    await store.waiting.where({ table }).delete()
    await store.waiting.bulkAdd(rows.map((row, at) => ({ ...row, count: at + 1, sentAt: null })))
    await store.joined.put({ ...fresh, ...planBase, written: rows.length })
  })
}
