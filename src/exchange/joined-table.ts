import { liveQuery } from 'dexie'
import { messagesAt } from '@/table/hub-code.ts'
import { type Invitation, readInvitation } from '@/table/invitation.ts'
import { Guest } from './guest.ts'
import { holdLine } from './held-line.ts'
import type { Entry } from './messages.ts'
import { ownEntries } from './own-entries.ts'
import { changedPlan, putOutPlan } from './put-out-plan.ts'
import type { Running, TableServices } from './services.ts'
import type { JoinedTable, TableStore, Waiting } from './table-store.ts'
import { wrappedBy } from './wrapped.ts'

/** The invitation by which this device is at a table. It was read before it was kept. */
export function invitationOf({ invitation }: Pick<JoinedTable, 'invitation'>): Invitation {
  const read = readInvitation(invitation)
  if (!read.ok) throw new Error('what is kept of the invitation does not read')
  return read.invitation
}

/** Puts an entry out: it waits here, counted, until the owner has said that it is in. */
export async function putOut(
  store: TableStore,
  table: string,
  entries: readonly { entry: Entry; eventId: string | null; count?: number }[],
): Promise<void> {
  await store.transaction('rw', store.joined, store.waiting, async () => {
    const joined = await store.joined.get(table)
    if (!joined) return
    // Two windows may come with the same entries of the log: the second finds them put out.
    const fresh = entries.filter(({ count }) => count === undefined || count > joined.putOut)
    const rows = fresh.map(
      ({ entry, eventId }, at): Waiting => ({
        ...{ table, count: joined.written + 1 + at, eventId },
        ...{ text: JSON.stringify(entry), sentAt: null },
      }),
    )
    await store.waiting.bulkAdd(rows)
    await store.joined.update(table, {
      written: joined.written + rows.length,
      putOut: Math.max(joined.putOut, ...fresh.map(({ count }) => count ?? 0)),
    })
  })
}

/** Works a table at which this device has a part: hands over what it writes, and takes in what it is told. */
export function runJoinedTable(services: TableServices, joined: JoinedTable): Running {
  const { store, notebook } = services
  const invitation = invitationOf(joined)
  const held = holdLine(services, messagesAt(joined.page), invitation.login, async (line, ended) =>
    new Guest(services, joined.table, invitation, await wrappedBy(invitation.secret)).at(
      line,
      ended,
    ),
  )
  // What is written here is put out whether the hub is there or not.
  const written = liveQuery(async () => {
    const now = await store.joined.get(joined.table)
    const whole = now?.trialId ? await notebook.wholeTrial(now.trialId) : undefined
    if (!now || !whole) return []
    const { device } = await notebook.settings()
    return ownEntries(whole, device, now.putOut)
  }).subscribe((entries) => {
    if (entries.length > 0) putOut(store, joined.table, entries).catch(services.onFailure)
  })
  const planned = liveQuery(async () => {
    const now = await store.joined.get(joined.table)
    const whole = now?.trialId ? await notebook.wholeTrial(now.trialId) : undefined
    const plan = whole && (await changedPlan(notebook, whole.trial.id, now?.planBase))
    return whole && plan ? { whole, plan } : null
  }).subscribe((changed) => {
    if (!changed) return
    const { plan, whole } = changed
    putOutPlan(store, joined.table, plan, whole).catch(services.onFailure)
  })
  return {
    ...held,
    stop: async () => {
      written.unsubscribe()
      planned.unsubscribe()
      await held.stop()
    },
  }
}
