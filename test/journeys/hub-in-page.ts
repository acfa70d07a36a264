import { jwtAuthenticator, wsconnect } from '@nats-io/nats-core'
import { readHubCode } from '@/table/hub-code.ts'
import { type Connect, openTable } from '@/table/hub-desk.ts'
import { inviteLogin } from '@/table/invite-login.ts'
import { openStreams } from '@/table/table-streams.ts'

const connect: Connect = (address, { name, claim, seed }) =>
  wsconnect({
    servers: address,
    authenticator: jwtAuthenticator(claim, new TextEncoder().encode(seed)),
    inboxPrefix: `_INBOX.${name}`,
    reconnect: false,
    timeout: 8000,
  })

/** Run in a page of the browser: opens a table with a hub's code, lets a taster in and sends a ballot; gives what came of it. */
export async function openedFromPage(text: string) {
  const read = readHubCode(text)
  if (!read.ok) return read
  const now = Math.floor(Date.now() / 1000)
  const answer = await openTable(connect, read.code, now)
  if (!answer.ok) return answer
  const { ticket } = answer
  const owner = await connect(
    ticket.address,
    inviteLogin(ticket, 'owner', { name: 'OWNER222', now }),
  )
  await openStreams(owner, ticket.replicas)
  const taster = await connect(
    ticket.address,
    inviteLogin(ticket, 'taster', { name: 'EL7K2MQ9', now }),
  )
  const taken = await taster.request('b.EL7K2MQ9', 'sealed', { timeout: 8000 })
  await Promise.all([owner.close(), taster.close()])
  return { ok: true, page: ticket.page, took: taken.json<{ stream?: string }>().stream }
}
