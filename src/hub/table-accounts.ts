import type { KeyPair } from '@nats-io/nkeys'
import { signedClaim } from '@/table/claims.ts'
import type { TableKeys } from '@/table/desk-asks.ts'
import { type Part, partNames, permissionsOf, streams } from '@/table/subjects.ts'

/** The name of whoever logs in, filled in by the server (since 2.9). */
const whoLogsIn = '{{name()}}'

/** Bytes that one table may keep on the hub's disk. */
export const diskOfTable = 64 * 1024 * 1024

const unlimited = { subs: -1, data: -1, payload: -1, imports: -1, exports: -1, wildcards: true }

/**
 * What the three accounts of one table may do, each signed by the hub's operator. Tasters and helpers stand in accounts of their
 * own that have no streams and reach three kinds of named subjects of the owner's: within one account a message that is allowed
 * could name any reply subject, and with it empty a stream. `now` in seconds since 1970; `leaves`: links to other servers that the
 * owner's account may have.
 */
export function tableClaims(
  operator: KeyPair,
  keys: TableKeys,
  now: number,
  replicas = 1,
  leaves = 0,
) {
  const scope = (part: Part) => ({
    kind: 'user_scope',
    key: keys.signers[part],
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
  const { owner, work, tasters } = keys.accounts
  const guests = (parts: readonly Part[], sends: readonly string[], connections: number) => ({
    type: 'account',
    limits: { ...unlimited, conn: connections, leaf: 0 },
    signing_keys: parts.map(scope),
    imports: [
      ...[...sends, 'h.*', asked].map((subject) => ({ ...service(subject), account: owner })),
      { ...heard, account: owner },
    ],
  })
  const owners = {
    type: 'account',
    limits: {
      ...{ ...unlimited, conn: 8, leaf: leaves, streams: 4, consumer: 16 },
      ...{ mem_storage: 0, disk_storage: diskOfTable * replicas, max_bytes_required: true },
    },
    signing_keys: [keys.signers.owner],
    // The server reads past it; by it the hub knows which accounts belong to a table.
    guests: { work, tasters },
    exports: [...['w.*', 'k.*', 'b.*', 'h.*', asked].map(service), heard],
  }
  const helping = partNames.filter((part) => part !== 'taster')
  return [
    { account: owner, says: owners },
    { account: work, says: guests(helping, ['w.*', 'k.*'], 32) },
    { account: tasters, says: guests(['taster'], ['b.*'], 64) },
  ].map(({ account, says }) => ({
    account,
    claim: signedClaim(
      { name: account.slice(0, 8), subject: account, issuedAt: now, says },
      operator,
    ),
  }))
}
