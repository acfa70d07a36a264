import { closeAtHub, revokeAtHub, userOf } from '@/table/hub-desk.ts'
import { closeStreams } from '@/table/table-streams.ts'
import { revoke } from './open-table.ts'
import type { TableServices } from './services.ts'
import type { OwnTable } from './table-store.ts'

/**
 * Closes a table: its streams and then its accounts are taken off the hub, and this device forgets its keys; what came in stays in
 * the notebook. `away`: the hub was not reached, so nothing of it was removed and the table stays open.
 */
export async function closeTable(
  services: TableServices,
  own: OwnTable,
): Promise<{ ok: true } | { ok: false; reason: 'away' }> {
  const { connect, now } = services
  try {
    const line = await connect(own.ticket.address, own.owner)
    try {
      await closeStreams(line)
    } finally {
      await line.close()
    }
    const asked = await closeAtHub(connect, own.hub, own.ticket, Math.floor(now() / 1000))
    // A hub that does not know it any more has forgotten it before.
    if (!asked.ok && asked.reason !== 'not-yours') return { ok: false, reason: 'away' }
  } catch {
    // No line to the hub: the baker may press again, or let the table be forgotten here alone.
    return { ok: false, reason: 'away' }
  }
  await forgetTable(services, own.trialId)
  return { ok: true }
}

/** Forgets a table here alone; what the hub holds of it, which it cannot read, stays there. */
export async function forgetTable(
  { store }: Pick<TableServices, 'store'>,
  trialId: string,
): Promise<void> {
  await store.transaction('rw', store.own, store.counts, store.heard, async () => {
    await store.own.delete(trialId)
    await store.counts.delete(trialId)
    await store.heard.where({ trialId }).delete()
  })
}

/** Takes a login back: at once here, and at the hub where it is reached; says whether it was. */
export async function takeBack(
  services: TableServices,
  own: OwnTable,
  name: string,
): Promise<{ atHub: boolean }> {
  await revoke(services, own.trialId, name)
  const invited = own.invited.find(({ login }) => login.name === name)
  if (!invited) return { atHub: false }
  const whom = { user: userOf(invited.login), taster: invited.part === 'taster' }
  const seconds = Math.floor(services.now() / 1000)
  try {
    const asked = await revokeAtHub(services.connect, own.hub, own.ticket, seconds, whom)
    return { atHub: asked.ok }
  } catch {
    // Not reached: here nothing of it is taken in any more, and the login runs out by itself.
    return { atHub: false }
  }
}

/** Leaves a table: what waits stays unsent, what came stays in the notebook. */
export async function leaveTable(
  { store }: Pick<TableServices, 'store'>,
  table: string,
): Promise<void> {
  await store.transaction('rw', store.joined, store.waiting, async () => {
    await store.joined.delete(table)
    await store.waiting.where({ table }).delete()
  })
}
