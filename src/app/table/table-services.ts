import { jwtAuthenticator, wsconnect } from '@nats-io/nats-core'
import { tellFailedWork } from '@/app/kit/page/failed-work.ts'
import type { Services } from '@/app/services/services.ts'
import type { TableServices } from '@/exchange/services.ts'
import { TableStore } from '@/exchange/table-store.ts'
import { type Reach, reachOf } from '@/table/hub-code.ts'
import type { Connect } from '@/table/hub-desk.ts'

const patienceMilliseconds = 8000

/** Connects from this page, by WebSocket. */
export const connect: Connect = async (address, { name, claim, seed }) =>
  await wsconnect({
    servers: address,
    authenticator: jwtAuthenticator(claim, new TextEncoder().encode(seed)),
    inboxPrefix: `_INBOX.${name}`,
    reconnect: false,
    ignoreClusterUpdates: true,
    timeout: patienceMilliseconds,
  })

/** What is kept of tables, opened when the first is met. */
let store: TableStore | null = null

export function tableServices({ notebook, now, newSeed }: Services): TableServices {
  store ??= new TableStore()
  return { notebook, store, now, draw: newSeed, connect, onFailure: tellFailedWork }
}

/** Whether this page can reach a hub: its own policy says which others it may. */
export function reachFromHere(hubPage: string): Reach {
  const policy = document.querySelector<HTMLMetaElement>(
    'meta[http-equiv="Content-Security-Policy"]',
  )
  return reachOf(hubPage, { origin: location.origin, policy: policy?.content ?? null })
}
