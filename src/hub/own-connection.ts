import { jwtAuthenticator, type NatsConnection, wsconnect } from '@nats-io/nats-core'
import { WebSocket } from 'ws'
import type { Login } from '@/table/invite-login.ts'

/** How long the hub waits for its own server: a small machine that is busy elsewhere may leave it without a turn for seconds. */
export const patienceMilliseconds = 12_000

/**
 * A connection by WebSocket from Node, which has none of its own before version 22. It says that it comes from the page `origin`,
 * and comes back by itself as often as the line is cut where `lasting` is true.
 */
export async function connectionFrom(
  origin: string,
  address: string,
  { name, claim, seed }: Login,
  lasting = false,
): Promise<NatsConnection> {
  return await wsconnect({
    servers: address,
    authenticator: jwtAuthenticator(claim, new TextEncoder().encode(seed)),
    inboxPrefix: `_INBOX.${name}`,
    reconnect: lasting,
    ...(lasting ? { maxReconnectAttempts: -1, reconnectTimeWait: 200 } : {}),
    ignoreClusterUpdates: true,
    timeout: patienceMilliseconds,
    wsFactory: async (url) => ({
      socket: new WebSocket(url, { origin }) as unknown as globalThis.WebSocket,
      encrypted: url.startsWith('wss:'),
    }),
  })
}
