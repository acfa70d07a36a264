import { createAccount, createOperator } from '@nats-io/nkeys'
import { signedClaim } from '@/table/claims.ts'

export interface HubAsked {
  /** The address it listens on; 127.0.0.1 unless somebody wants the local network on purpose. */
  host: string
  /** The port of its WebSocket listener, where the devices come. */
  port: number
  /** A port of this machine alone, which the server wants besides. */
  ownPort: number
  /** Where it keeps its streams and accounts. */
  folder: string
  /** Pages that may connect, by origin; a page from elsewhere is refused. */
  origins: readonly string[]
  /** Files of a certificate and its key; null for none, which is fit for this machine alone or for a hub without a seal. */
  certificate: { cert: string; key: string } | null
}

/** The operator of a hub and its own account, new; `now` in seconds since 1970. */
export function newOperator(now: number) {
  const operator = createOperator()
  const system = createAccount()
  const systemId = system.getPublicKey()
  const subject = operator.getPublicKey()
  const claim = signedClaim(
    {
      name: 'kitchen',
      subject,
      issuedAt: now,
      says: { type: 'operator', system_account: systemId },
    },
    operator,
  )
  const unlimited = {
    subs: -1,
    data: -1,
    payload: -1,
    conn: -1,
    leaf: -1,
    imports: -1,
    exports: -1,
  }
  const systemClaim = signedClaim(
    {
      ...{ name: 'system', subject: systemId, issuedAt: now },
      says: { type: 'account', limits: { ...unlimited, wildcards: true } },
    },
    operator,
  )
  return { operator, claim, systemId, systemClaim }
}

interface Accounts {
  operatorClaim: string
  systemId: string
  /** The claims of all accounts, that of the system among them. */
  claims: readonly { account: string; claim: string }[]
}

/**
 * The configuration of the message server (nats-server 2.9 or later): nobody comes in without a login, no page of another
 * origin, and size, speed and storage have their limits. There is no port that tells how it stands.
 */
export function configurationOf(asked: HubAsked, { operatorClaim, systemId, claims }: Accounts) {
  const text = (value: string) => JSON.stringify(value)
  const tls = asked.certificate
    ? `tls { cert_file: ${text(asked.certificate.cert)}, key_file: ${text(asked.certificate.key)} }`
    : 'no_tls: true'
  return `server_name: evenhand
listen: "127.0.0.1:${asked.ownPort}"
max_payload: 32768
max_control_line: 4096
max_connections: 2000
max_pending: 4MB
write_deadline: "5s"
ping_interval: "20s"
ping_max: 2
jetstream { store_dir: ${text(`${asked.folder}/streams`)}, max_mem: 64M, max_file: 4G }
websocket {
  listen: ${text(`${asked.host}:${asked.port}`)}
  ${tls}
  handshake_timeout: "5s"
  allowed_origins: [${asked.origins.map(text).join(', ')}]
}
operator: ${operatorClaim}
system_account: ${systemId}
resolver { type: full, dir: ${text(`${asked.folder}/accounts`)}, allow_delete: true, interval: "2m" }
resolver_preload {
${claims.map(({ account, claim }) => `  ${account}: ${claim}`).join('\n')}
}
`
}
