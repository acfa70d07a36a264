import { homedir } from 'node:os'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import type { HubAsked } from './start-hub.ts'

const options = {
  lan: { type: 'string' },
  port: { type: 'string' },
  page: { type: 'string' },
  cert: { type: 'string' },
  key: { type: 'string' },
  also: { type: 'string', multiple: true },
  folder: { type: 'string' },
  tables: { type: 'string' },
  'no-app': { type: 'boolean' },
  beside: { type: 'string' },
  others: { type: 'string', multiple: true },
  list: { type: 'boolean' },
  forget: { type: 'string' },
  help: { type: 'boolean' },
} as const

export const hubHelp = `Usage: npm run hub -- [options]

Starts a hub: what a kitchen needs so that several devices can work one trial day. Without options it is for this machine alone.
Build the app first (npm run build). Ctrl-c stops it; what it holds is there again at the next start.

  --lan ADDRESS       also listen on this address of your network, such as 192.168.1.20
  --port N            port of app and hub (4173, as npm start: then it is the same notebook)
  --cert FILE         certificate (PEM) for the network; with --key FILE. Without, pages there can seal nothing
  --page URL          how people reach it, where that is not http(s)://ADDRESS:PORT/
  --also ORIGIN       another page that may connect, such as https://evenhand.example; may be given more than once
  --folder DIR        where it keeps keys and messages
  --tables N          most tables at a time (60; each may take 64 MB of disk)
  --no-app            the hub alone
  --list              name the tables that are held, with their age and size, and end
  --forget NAME       take one off, which nobody closed; the hub must be stopped
  --beside HOST:PORT  stand together with --others HOST:PORT (twice): the three share one keys.json and HUB_PASSWORD

docs/hub.md tells of schools, certificates, three servers together and backup.`

export type HubAct = { kind: 'start' | 'list' } | { kind: 'forget'; name: string }

export type AskedRead =
  | { ok: true; act: HubAct; asked: HubAsked }
  | { ok: false; help: true }
  | { ok: false; help: false; why: string }

/** What the words of a command ask for; where they do not read, which of them and the mend. */
export function askedHub(
  words: readonly string[],
  environment: Readonly<Record<string, string | undefined>>,
): AskedRead {
  const no = (why: string) => ({ ok: false, help: false, why }) as const
  const read = parsed(words)
  if (typeof read === 'string') return no(`${read} --help lists the options.`)
  if (read.help) return { ok: false, help: true }
  const port = Number(read.port ?? 4173)
  if (!Number.isInteger(port) || port < 1 || port > 65_535)
    return no(`--port ${read.port} is not a port: a whole number from 1 to 65535.`)
  const mostTables = Number(read.tables ?? 60)
  if (!Number.isInteger(mostTables) || mostTables < 1 || mostTables > 1000)
    return no(`--tables ${read.tables} is not a number of tables: 1 to 1000.`)
  if ((read.cert === undefined) !== (read.key === undefined))
    return no('--cert and --key go together: a certificate and its key.')
  if (read.cert !== undefined && read.lan === undefined)
    return no(
      '--cert is for the network: say by --lan ADDRESS where to listen. This machine needs none.',
    )
  const page = read.page === undefined ? null : pageOf(read.page)
  if (page === undefined) return no(`--page ${read.page} is no address, such as https://NAME/.`)
  const also = (read.also ?? []).map(originOf)
  const odd = read.also?.find((_, at) => also[at] === undefined)
  if (odd !== undefined) return no(`--also ${odd} is no page, such as https://NAME.`)
  const password = environment.HUB_PASSWORD
  const others = (read.others ?? []).flatMap((each) => each.split(','))
  if ((read.beside === undefined) !== (others.length === 0))
    return no('--beside and --others go together: HOST:PORT of this server and of the others.')
  if (read.beside !== undefined && !password)
    return no('Servers that stand together share a password: set HUB_PASSWORD to one of your own.')
  return {
    ok: true,
    act:
      read.forget === undefined
        ? { kind: read.list ? 'list' : 'start' }
        : { kind: 'forget', name: read.forget },
    asked: {
      folder: read.folder ?? defaultFolder(environment),
      ...{ port, lan: read.lan ?? null, page, mostTables },
      certificate:
        read.cert === undefined || read.key === undefined
          ? null
          : { cert: read.cert, key: read.key },
      also: also.flatMap((each) => each ?? []),
      app: read['no-app'] ? null : 'dist',
      beside:
        read.beside === undefined || !password ? null : { own: read.beside, others, password },
    },
  }
}

function parsed(words: readonly string[]) {
  try {
    return parseArgs({ args: [...words], options }).values
  } catch (failure) {
    return failure instanceof Error ? `${failure.message.split('. ')[0]}.` : String(failure)
  }
}

const defaultFolder = ({
  XDG_DATA_HOME: data,
}: Readonly<Record<string, string | undefined>>): string =>
  join(data ?? join(homedir(), '.local', 'share'), 'evenhand-hub')

const originOf = (text: string): string | undefined =>
  /^https?:/.test(text) && URL.canParse(text) ? new URL(text).origin : undefined

const pageOf = (text: string): string | undefined => {
  const origin = originOf(text)
  return origin && `${origin}${new URL(text).pathname.replace(/\/?$/, '/')}`
}
