import { createAccount, type KeyPair } from '@nats-io/nkeys'
import { seedOf, signedClaim } from '@/table/claims.ts'
import type { Ticket } from '@/table/invite-login.ts'
import { type Part, partNames, permissionsOf, streams } from '@/table/subjects.ts'

/** The name of whoever logs in, filled in by the server (since 2.9). */
const whoLogsIn = '{{name()}}'

/** Bytes that one table may keep on the hub's disk. */
export const diskOfTable = 64 * 1024 * 1024

const unlimited = { subs: -1, data: -1, payload: -1, imports: -1, exports: -1, wildcards: true }

/**
 * The three accounts of one table, signed by the hub's operator, with the ticket for whoever opens it. Tasters and helpers stand
 * in accounts of their own that have no streams and reach three kinds of named subjects of the owner's: within one account a
 * message that is allowed could name any reply subject, and with it empty a stream.
 */
export function tableAccounts(operator: KeyPair, address: string, now: number) {
  const accounts = { owner: createAccount(), work: createAccount(), tasters: createAccount() }
  const signers: Record<'owner' | Part, KeyPair> = {
    owner: createAccount(),
    bench: createAccount(),
    oven: createAccount(),
    key: createAccount(),
    taster: createAccount(),
    watch: createAccount(),
  }
  const ownerId = accounts.owner.getPublicKey()
  const scope = (part: Part) => ({
    kind: 'user_scope',
    key: signers[part].getPublicKey(),
    role: part,
    template: {
      ...permissionsOf(part, whoLogsIn),
      subs: 16,
      data: -1,
      payload: -1,
      allowed_connection_types: ['WEBSOCKET'],
    },
  })
  const service = (subject: string) => ({ name: subject, subject, type: 'service' })
  const asked = `$JS.API.DIRECT.GET.${streams.notices}.n.>`
  const heard = { name: 'n.>', subject: 'n.>', type: 'stream' }
  const guests = (parts: readonly Part[], sends: readonly string[], connections: number) => ({
    type: 'account',
    limits: { ...unlimited, conn: connections, leaf: 0 },
    signing_keys: parts.map(scope),
    imports: [
      ...[...sends, asked].map((subject) => ({ ...service(subject), account: ownerId })),
      { ...heard, account: ownerId },
    ],
  })
  const owner = {
    type: 'account',
    limits: {
      ...{ ...unlimited, conn: 8, leaf: 0, streams: 4, consumer: 16 },
      ...{ mem_storage: 0, disk_storage: diskOfTable, max_bytes_required: true },
    },
    signing_keys: [signers.owner.getPublicKey()],
    exports: [...['w.*', 'k.*', 'b.*', asked].map(service), heard],
  }
  const helping = partNames.filter((part) => part !== 'taster')
  const claims = [
    { key: accounts.owner, says: owner },
    { key: accounts.work, says: guests(helping, ['w.*', 'k.*'], 32) },
    { key: accounts.tasters, says: guests(['taster'], ['b.*'], 64) },
  ].map(({ key, says }) => {
    const subject = key.getPublicKey()
    return {
      account: subject,
      claim: signedClaim({ name: subject.slice(0, 8), subject, issuedAt: now, says }, operator),
    }
  })
  const ticket: Ticket = {
    address,
    accounts: {
      owner: ownerId,
      work: accounts.work.getPublicKey(),
      tasters: accounts.tasters.getPublicKey(),
    },
    seeds: {
      ...{ owner: seedOf(signers.owner), bench: seedOf(signers.bench), oven: seedOf(signers.oven) },
      ...{ key: seedOf(signers.key), taster: seedOf(signers.taster), watch: seedOf(signers.watch) },
    },
  }
  return { ticket, claims }
}
