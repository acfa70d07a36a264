import { existsSync, writeFileSync } from 'node:fs'
import { isIPv6 } from 'node:net'
import { join } from 'node:path'
import { seedOf } from '@/table/claims.ts'
import { hubCodeText } from '@/table/hub-code.ts'
import { type CertificateFiles, certificateOf } from './certificate.ts'
import { type Beside, configurationOf, replicasOf } from './configuration.ts'
import { tablesAmong } from './desk.ts'
import { doors } from './doors.ts'
import { findServer } from './find-server.ts'
import { freePort, noListening } from './free-port.ts'
import { type HubTrouble, wordsOf } from './hub-trouble.ts'
import { kitchenClaims } from './kitchen-claims.ts'
import { kitchenKeys } from './kitchen-keys.ts'
import { type MessageServer, messageServer } from './message-server.ts'
import { leadMessages } from './message-way.ts'
import { configurationFile, runsOn } from './runs-on.ts'
import { startDesk } from './start-desk.ts'

export interface HubAsked {
  /** Where it keeps keys, accounts and streams. */
  folder: string
  port: number
  /** The address in the network on which it listens besides this machine's own; null for none. */
  lan: string | null
  certificate: CertificateFiles | null
  /** Address under which people reach it, with its last slash, where that is another than the address and port it listens on. */
  page: string | null
  /** Other pages that may connect, by origin: the app on a host of files. */
  also: readonly string[]
  /** Folder of the built app; null to start the hub without it. */
  app: string | null
  mostTables: number
  beside: Beside | null
}

export interface RunningHub {
  /** Links with the hub's code: on this machine, and as others reach it. */
  here: string
  there: string | null
  version: string
  /** How many tables it holds. */
  tables: () => Promise<number>
  messages: Pick<MessageServer, 'id' | 'kill' | 'fall'>
  stop: () => Promise<void>
}

export interface Told {
  /** The message server ended of itself and is started again. */
  again: () => void
  /** The hub cannot go on. */
  gone: (trouble: HubTrouble) => void
  troubled: (failure: unknown) => void
}

export type Started = { ok: true; hub: RunningHub } | { ok: false; trouble: HubTrouble }

/** The message server lets in one page by itself, which no browser can claim to be. */
const innerOrigin = 'http://hub.invalid'
const nowSeconds = () => Math.floor(Date.now() / 1000)

/** Starts message server, desk and app on one port; or says what keeps it from that, and leaves nothing running. */
export async function startHub(asked: HubAsked, told: Told): Promise<Started> {
  const no = (trouble: HubTrouble) => ({ ok: false, trouble }) as const
  const program = findServer()
  if (!program) return no({ reason: 'no-server' })
  const here = `http://127.0.0.1:${asked.port}/`
  const scheme = asked.certificate ? 'https' : 'http'
  const there = asked.page ?? (asked.lan && `${scheme}://${hostText(asked.lan)}:${asked.port}/`)
  const secret =
    asked.certificate && certificateOf(asked.certificate, hostOf(there ?? here), new Date())
  if (secret?.ok === false) return no(secret)
  if (asked.app !== null && !existsSync(join(asked.app, 'index.html')))
    return no({ reason: 'no-app', path: asked.app })
  for (const host of ['127.0.0.1', ...(asked.lan === null ? [] : [asked.lan])]) {
    const reason = await noListening(host, asked.port)
    if (reason) return no({ reason, host, port: asked.port })
  }
  const read = kitchenKeys(asked.folder)
  if (!read.ok) return no(read)
  const { keys } = read
  const file = configurationFile(asked.folder)
  const process = await runsOn(asked.folder)
  if (process !== null) return no({ reason: 'runs-already', path: asked.folder, process })
  // Of servers that stand together each has a name of its own.
  const server = `${keys.server}${asked.beside ? `-${asked.beside.own.replaceAll(/\W/g, '-')}` : ''}`
  const [port, ownPort] = [await freePort(), await freePort()]
  writeFileSync(
    file,
    configurationOf(
      { ...asked, server, port, ownPort, origin: innerOrigin },
      kitchenClaims(keys, nowSeconds()),
    ),
    { mode: 0o600 },
  )
  const stops: (() => Promise<void>)[] = []
  const stop = async () => {
    for (const each of stops.toReversed()) await each()
    stops.length = 0
  }
  try {
    const messages = await messageServer(program.path, file, {
      again: told.again,
      gone: (why) => told.gone({ reason: 'server-ended', why }),
    })
    stops.push(messages.stop)
    const desk = await startDesk(keys, {
      ...{ address: `ws://127.0.0.1:${port}/`, origin: innerOrigin, now: nowSeconds },
      ...{ page: there ?? here, mostTables: asked.mostTables, troubled: told.troubled },
      replicas: asked.beside ? replicasOf(asked.beside) : 1,
    })
    stops.push(desk.stop)
    const own = [here, here.replace('127.0.0.1', 'localhost'), ...(there === null ? [] : [there])]
    const origins = new Set([...own.map((page) => new URL(page).origin), ...asked.also])
    const opened = await doors(
      asked,
      secret,
      own.map((page) => new URL(page).hostname),
    )
    stops.push(opened.close)
    for (const door of opened.servers) {
      const end = leadMessages(door, { origins, inner: { port, origin: innerOrigin } })
      stops.push(async () => end())
    }
    const code = { account: keys.desk.getPublicKey(), seed: seedOf(keys.asker) }
    return {
      ok: true,
      hub: {
        here: hubCodeText({ page: here, ...code }),
        there: there === null ? null : hubCodeText({ page: there, ...code }),
        version: program.version,
        tables: async () => tablesAmong(await desk.server.list()),
        messages,
        stop,
      },
    }
  } catch (failure) {
    await stop()
    return no({ reason: 'server-ended', why: wordsOf(failure) })
  }
}

const hostText = (host: string) => (isIPv6(host) ? `[${host}]` : host)
const hostOf = (page: string) => new URL(page).hostname.replace(/^\[|\]$/g, '')
