import type { NatsConnection } from '@nats-io/nats-core'
import type { KeyPair } from '@nats-io/nkeys'
import * as z from 'zod/mini'
import { signedClaim } from '@/table/claims.ts'
import { patienceMilliseconds } from './own-connection.ts'
import { type ClaimRead, readClaim } from './read-claim.ts'

/** What is asked while the line comes back after the server was away is lost, and asked again soon: all of it may be asked twice. */
const firstTryMilliseconds = 800
const doneShape = z.object({ data: z.object({ code: z.literal(200) }) })
const listShape = z.object({ data: z.nullable(z.array(z.string())) })

/** What the message server knows of accounts, asked as its own account, which alone may. */
export interface AccountsAtServer {
  /** Public keys of all accounts. */
  list: () => Promise<string[]>
  claimOf: (account: string) => Promise<ClaimRead | null>
  /** Has it take the claim of an account, new or in place of the one before; whoever that one let in and this does not is cut off. */
  keep: (claim: string) => Promise<boolean>
  remove: (accounts: readonly string[], now: number) => Promise<boolean>
}

export function accountsAtServer(system: NatsConnection, operator: KeyPair): AccountsAtServer {
  const request = async (subject: string, body: string, timeout: number): Promise<string> =>
    (await system.request(`$SYS.REQ.${subject}`, body, { timeout })).string()
  const answered = (subject: string, body = ''): Promise<string> =>
    request(subject, body, firstTryMilliseconds).catch(() =>
      request(subject, body, patienceMilliseconds),
    )
  const asked = async (subject: string, body?: string): Promise<unknown> =>
    JSON.parse(await answered(subject, body))
  const done = async (subject: string, body: string) =>
    doneShape.safeParse(await asked(subject, body)).success
  return {
    list: async () => listShape.parse(await asked('CLAIMS.LIST')).data ?? [],
    claimOf: async (account) => readClaim(await answered(`ACCOUNT.${account}.CLAIMS.LOOKUP`)),
    keep: async (claim) => await done('CLAIMS.UPDATE', claim),
    remove: async (accounts, now) => {
      const subject = operator.getPublicKey()
      const says = { type: 'generic', accounts }
      const ask = signedClaim({ name: 'remove', subject, issuedAt: now, says }, operator)
      return await done('CLAIMS.DELETE', ask)
    },
  }
}
