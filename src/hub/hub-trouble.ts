/** Why a hub does not start, or ends. */
export type HubTrouble =
  | { reason: 'no-server' }
  | { reason: 'cannot-write' | 'not-keys'; path: string; why: string }
  | { reason: 'no-app'; path: string }
  | {
      reason: 'cannot-read' | 'not-a-pair' | 'ran-out' | 'other-name'
      file: string
      why: string
    }
  | { reason: 'port-in-use' | 'not-this-machine' | 'not-allowed'; host: string; port: number }
  | { reason: 'runs-already'; path: string; process: string }
  | { reason: 'no-such-table'; name: string }
  | { reason: 'server-ended' | 'no-answer'; why: string }

/** The first line of what a failure says of itself. */
export const wordsOf = (failure: unknown): string =>
  failure instanceof Error ? (failure.message.split('\n')[0] ?? '') : String(failure)

/** What keeps a hub from its work, with the mend, as the person at the terminal reads it. */
export function troubleText(trouble: HubTrouble): string {
  switch (trouble.reason) {
    case 'no-server':
      return 'No message server found. Install nats-server 2.9 or newer (Debian: apt-get install nats-server) or name one in NATS_SERVER_PATH.'
    case 'cannot-write':
      return `${trouble.path} cannot be written (${trouble.why}). Name another folder with --folder.`
    case 'not-keys':
      return `${trouble.path} does not hold the keys of a hub (${trouble.why}). Put back a copy of it, or name an empty folder with --folder: its tables are then new ones.`
    case 'no-app':
      return `There is no built app in ${trouble.path}. Run npm run build first, or add --no-app to start the hub alone.`
    case 'cannot-read':
      return `${trouble.file} cannot be read (${trouble.why}). --cert and --key each name a file in PEM.`
    case 'not-a-pair':
      return `${trouble.file} and its key do not go together (${trouble.why}). --cert names the certificate with what leads to its authority, --key the key it was made for.`
    case 'ran-out':
      return `The certificate in ${trouble.file} ran out on ${trouble.why}. Get a new one.`
    case 'other-name':
      return `The certificate in ${trouble.file} is for another name (${trouble.why}). Say by --page how people reach it, such as --page https://NAME/, or get one for this name.`
    case 'port-in-use':
      return `Port ${trouble.port} of ${trouble.host} is in use, perhaps by npm start. Stop that, or choose another with --port; a notebook belongs to one port.`
    case 'not-allowed':
      return `Port ${trouble.port} is kept for the system. Choose one over 1023 with --port.`
    case 'not-this-machine':
      return `${trouble.host} is no address of this machine. --lan takes the address it has in your network.`
    case 'runs-already':
      return `A message server already runs on ${trouble.path} (process ${trouble.process}), of a hub that runs or was cut off. Stop it first, or name another folder with --folder.`
    case 'no-such-table':
      return `No table ${trouble.name} is held here. --list names those that are.`
    case 'server-ended':
      return `The message server does not run (${trouble.why}).`
    case 'no-answer':
      return `The message server does not answer (${trouble.why}).`
  }
}
