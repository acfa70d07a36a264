import { jwtAuthenticator, type NatsConnection, wsconnect } from '@nats-io/nats-core'
import { WebSocket } from 'ws'
import { doneField, ownReturn, responseIdAt } from '@/app/own/own-state.ts'
import { invitationOf, putOut, runJoinedTable } from '@/exchange/joined-table.ts'
import { invite, keepJoinedTable, keepOwnTable, linkOf } from '@/exchange/open-table.ts'
import { runOwnTable } from '@/exchange/own-table.ts'
import type { Running, TableServices } from '@/exchange/services.ts'
import { TableStore } from '@/exchange/table-store.ts'
import { createNotebook } from '@/notebook/create-notebook.ts'
import type { Notebook, OpenNotebook } from '@/notebook/notebook.ts'
import { type BallotSlip, readSlip } from '@/slip/ballot-slip.ts'
import { bytesOfLinkText, linkTextOf } from '@/slip/link-text.ts'
import { bytesOfReturn } from '@/slip/return-slip.ts'
import { readInvitation } from '@/table/invitation.ts'
import type { Login, Ticket } from '@/table/invite-login.ts'
import type { Part } from '@/table/subjects.ts'
import { type Came, messagesOf } from './all-that-came.ts'
import { patience } from './patience.ts'

let names = 0
let drawn = 0

/** One device of a table: its notebook, what it keeps of tables, and its way to the hub. */
export interface Device {
  notebook: OpenNotebook
  services: TableServices
  /** Every frame that came to it and went from it, as text of one sign a byte. */
  frames: string[]
  failures: unknown[]
  running: Running | null
}

/** A device with an empty notebook. `clockLater`: how much its clock stands later than this machine's. */
export function newDevice({ address }: Ticket, { clockLater = 0 } = {}): Device {
  const name = `table-device-${String(++names).padStart(3, '0')}`
  const now = () => Date.now() + clockLater
  // Of one length, so that what is read by its id comes as it was written.
  const newId = () => `${name}-${String(++drawn).padStart(6, '0')}`
  const notebook = createNotebook(name, { now, zone: 'Europe/Rome', newId, newSeed: () => 7 })
  const frames: string[] = []
  const failures: unknown[] = []
  const services: TableServices = {
    ...{ notebook, now, store: new TableStore(`${name}-tables`) },
    draw: () => crypto.getRandomValues(new Uint32Array(1))[0] ?? 0,
    connect: (_, login) => listenedConnection(address, login, frames),
    onFailure: (failure) => failures.push(failure),
  }
  return { notebook, services, frames, failures, running: null }
}

const hub = { page: 'http://evenhand.test/', account: '', seed: '' }

/** The device opens a table for a trial of its notebook, or goes on with it. */
export async function opens(
  device: Device,
  trialId: string,
  ticket: Ticket,
  again = false,
): Promise<void> {
  const kept = again ? await device.services.store.own.get(trialId) : undefined
  const own = kept ?? (await keepOwnTable(device.services, trialId, ticket, hub))
  device.running = runOwnTable(device.services, own)
}

/** Invites a device and has it join by the link alone. Gives the login's name. */
export async function joins(
  owner: Device,
  trialId: string,
  guest: Device,
  part: Part,
  { tasterId = null as string | null, sealed = true } = {},
): Promise<string> {
  const invited = await invite(owner.services, trialId, { part, tasterId, sealed })
  const own = await owner.services.store.own.get(trialId)
  if (!own) throw new Error('no table')
  await joinsBy(guest, linkOf(own, invited))
  return invited.login.name
}

/** Joins by a link, as a second device with the same code would too. */
export async function joinsBy(guest: Device, link: string): Promise<void> {
  const [page = '', text = ''] = link.split('#/join/')
  const read = readInvitation(text)
  if (!read.ok) throw new Error(read.reason)
  await keepJoinedTable(guest.services, page, text, read.invitation)
  await comesBack(guest)
}

/** Runs the device's part of its table, new or again. */
export async function comesBack(guest: Device): Promise<void> {
  const [joined] = await guest.services.store.joined.toArray()
  if (!joined) throw new Error('joined nothing')
  guest.running = runJoinedTable(guest.services, joined)
}

export async function goesOffline(device: Device): Promise<void> {
  await device.running?.stop()
  device.running = null
}

export const waitingAt = (device: Device) => device.services.store.waiting.count()

export async function wholeOf(notebook: Notebook, trialId: string) {
  const whole = await notebook.wholeTrial(trialId)
  if (!whole) throw new Error('no such trial')
  return whole
}

/** A connection as the app makes it, and every frame that comes over it, one sign a byte. */
async function listenedConnection(
  address: string,
  { name, claim, seed }: Login,
  frames: string[],
): Promise<NatsConnection> {
  return await wsconnect({
    servers: address,
    authenticator: jwtAuthenticator(claim, new TextEncoder().encode(seed)),
    inboxPrefix: `_INBOX.${name}`,
    reconnect: false,
    timeout: patience,
    wsFactory: async (url) => {
      const socket = new WebSocket(url, { origin: 'http://evenhand.test' })
      socket.on('message', (data: Buffer) => frames.push(Buffer.from(data).toString('latin1')))
      return { socket: socket as unknown as globalThis.WebSocket, encrypted: false }
    },
  })
}

/** The ballot that a taster's device was sent; null while there is none. */
export async function slipAt(device: Device): Promise<BallotSlip | null> {
  const [joined] = await device.services.store.joined.toArray()
  const bytes = joined?.notice?.slip ? bytesOfLinkText(joined.notice.slip) : null
  const read = bytes && readSlip(bytes)
  return read?.ok ? read.slip : null
}

/** The taster seals the first servings of the slip, `through` of them by now, and hands their ballots over. */
export async function tastes(
  device: Device,
  through: number,
  scoreOf: (code: string, place: number) => number = () => 6,
): Promise<void> {
  const slip = await slipAt(device)
  const [joined] = await device.services.store.joined.toArray()
  if (!slip || !joined) throw new Error('no slip')
  const texts: Record<string, string> = { nonce: String(nonceOf(joined.seat)), heard: 'yes' }
  const at = slip.issuedMinute * 60_000 + 90_000
  for (const code of slip.codes.slice(0, through)) {
    const answers = slip.questions.map((_, place) => ({
      responseId: responseIdAt(place),
      value: scoreOf(code, place),
    }))
    texts[doneField(code)] = JSON.stringify({ answers, words: '', startedAt: at, sealedAt: at + 9 })
  }
  const back = ownReturn(slip, { ...texts, acts: String(through) })
  const text = linkTextOf(bytesOfReturn(back, slip.key))
  const entry = { kind: 'ballots' as const, text }
  await putOut(device.services.store, joined.table, [{ entry, eventId: null }])
}

const nonceOf = (seat: string) =>
  [...seat].reduce((number, sign) => (number * 31 + sign.charCodeAt(0)) >>> 0, 7)

/** Everything that came to a device, in clear, opened with its own keys and, of a slip, unpacked: what it could ever know. */
export async function allThatCameTo(
  device: Device,
): Promise<{ opened: number; text: string; came: Came[] }> {
  const [joined] = await device.services.store.joined.toArray()
  if (!joined) throw new Error('joined nothing')
  const came = await messagesOf(device.frames, invitationOf(joined))
  const read = came.flatMap(({ opened }) => opened ?? [])
  return { opened: read.length, text: [...device.frames, ...read].join(''), came }
}
