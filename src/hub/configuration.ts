import { processFile } from './runs-on.ts'
import { diskOfTable } from './table-accounts.ts'

export interface ServerAsked {
  /** What it calls itself. */
  server: string
  /** Ports of this machine alone: that of its WebSocket listener, and one that the server wants besides. */
  port: number
  ownPort: number
  /** Where it keeps its streams and accounts. */
  folder: string
  /** The one page that it lets connect by itself: the hub stands before it and asks where a page comes from. */
  origin: string
  /** How many tables it has disk for. */
  mostTables: number
  /** Where it stands together with others; null for one that stands alone. */
  beside: Beside | null
}

export interface Beside {
  /** HOST:PORT on which the others reach this one. */
  own: string
  /** The same of the others. */
  others: readonly string[]
  /** What all of them know, and nobody else. */
  password: string
}

export interface ServerAccounts {
  operatorClaim: string
  systemId: string
  /** The claims it is started with, that of its own account among them; the others are given to it while it runs. */
  claims: readonly { account: string; claim: string }[]
}

/**
 * The configuration of the message server (nats-server 2.9 or later): nobody comes in without a login, and size, speed and storage
 * have their limits. It listens to this machine alone; there is no port that tells how it stands.
 */
export function configurationOf(
  asked: ServerAsked,
  { operatorClaim, systemId, claims }: ServerAccounts,
) {
  const text = (value: string) => JSON.stringify(value)
  const { beside } = asked
  const replicas = beside ? replicasOf(beside) : 1
  return `server_name: ${asked.server}
listen: "127.0.0.1:${asked.ownPort}"
pid_file: ${text(processFile(asked.folder))}
max_payload: 32768
max_control_line: 4096
max_connections: 2000
max_pending: 4MB
write_deadline: "5s"
ping_interval: "20s"
ping_max: 2
jetstream { store_dir: ${text(`${asked.folder}/streams`)}, max_mem: 64M, max_file: ${asked.mostTables * diskOfTable * replicas} }
websocket {
  listen: "127.0.0.1:${asked.port}"
  no_tls: true
  handshake_timeout: "5s"
  authorization { timeout: 6 }
  allowed_origins: [${text(asked.origin)}]
}
${beside ? clusterOf(beside) : ''}operator: ${operatorClaim}
system_account: ${systemId}
resolver { type: full, dir: ${text(`${asked.folder}/accounts`)}, allow_delete: true, interval: "2m" }
resolver_preload {
${claims.map(({ account, claim }) => `  ${account}: ${claim}`).join('\n')}
}
`
}

/** In how many places a stream is kept: in three where there are as many servers, since two would not outvote one. */
export const replicasOf = ({ others }: Beside): number => (others.length >= 2 ? 3 : 1)

function clusterOf({ own, others, password }: Beside): string {
  const login = `hub:${encodeURIComponent(password)}`
  return `cluster {
  name: evenhand
  listen: ${JSON.stringify(own)}
  no_advertise: true
  authorization { user: hub, password: ${JSON.stringify(password)} }
  routes: [${others.map((other) => JSON.stringify(`nats://${login}@${other}`)).join(', ')}]
}
`
}
