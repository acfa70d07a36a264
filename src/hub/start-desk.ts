import type { Msg, NatsConnection } from '@nats-io/nats-core'
import { type DeskAnswer, deskSubjects } from '@/table/desk-asks.ts'
import { accountsAtServer } from './accounts-at-server.ts'
import { type Desk, openAsked, ownersAsked } from './desk.ts'
import { ownLogin } from './kitchen-claims.ts'
import type { KitchenKeys } from './kitchen-keys.ts'
import { connectionFrom } from './own-connection.ts'

export interface DeskAsked extends Pick<Desk, 'page' | 'replicas' | 'mostTables' | 'now'> {
  /** Address and page origin under which the message server lets the hub itself in. */
  address: string
  origin: string
  /** Told of an ask that failed by the message server's fault. */
  troubled: (failure: unknown) => void
}

/** Answers whoever asks the hub for tables, one ask after another, until it is told to stop. */
export async function startDesk(
  keys: KitchenKeys,
  { address, origin, troubled, ...asked }: DeskAsked,
) {
  const own = (account: 'system' | 'desk') =>
    connectionFrom(origin, address, ownLogin(keys[account], account, asked.now()), true)
  const system = await own('system')
  const line = await own('desk')
  const server = accountsAtServer(system, keys.operator)
  const desk: Desk = { ...asked, operator: keys.operator, server }
  let last: Promise<void> = Promise.resolve()
  const answering = (act: (desk: Desk, body: string) => Promise<DeskAnswer>) => ({
    // Where several hubs stand together one of them answers.
    queue: 'desk',
    callback: (failure: Error | null, message: Msg) => {
      if (failure) return troubled(failure)
      last = last.then(async () => {
        message.respond(JSON.stringify(await answerOf(act, message.string())))
      })
    },
  })
  const answerOf = async (act: typeof openAsked, body: string): Promise<DeskAnswer> => {
    try {
      return await act(desk, body)
    } catch (failure) {
      // The message server is away or was slow: whoever asked is told so, and asks again.
      troubled(failure)
      return { ok: false, reason: 'hub-failed' }
    }
  }
  line.subscribe(deskSubjects.open, answering(openAsked))
  line.subscribe(deskSubjects.owners, answering(ownersAsked))
  await line.flush()
  return { server, stop: () => closed([line, system]) }
}

const closed = async (lines: readonly NatsConnection[]) => {
  for (const line of lines) await line.close()
}
