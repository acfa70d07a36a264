import { bytesOfLinkText, linkTextOf } from '@/slip/link-text.ts'
import { base32Of, bytesOfBase32 } from './base32-text.ts'
import { keyOfSeed } from './claims.ts'
import type { Login } from './invite-login.ts'
import { type Part, partNames } from './subjects.ts'

/** All that one device needs to come to a table. It stands behind the # of a link, which no server is sent. */
export interface Invitation {
  part: Part
  /** The table's own random name, eight signs. */
  table: string
  login: Login
  /** From which the keys of this invitation follow; null where nothing is sealed, for a page on plain http. */
  secret: Uint8Array | null
}

export type InvitationRead =
  | { ok: true; invitation: Invitation }
  /** `damaged`: signs are missing or changed. `newer-version`: written by a later program. */
  | { ok: false; reason: 'damaged' | 'newer-version' }

const version = 1
const unsealed = 0x80
const sizes = { name: 8, id: 16, moment: 4, key: 35, seed: 36, secret: 16, signature: 64 } as const

/** The parts of a login's claim that a link must carry; the rest follows from them. */
interface ClaimBody {
  jti: string
  iat: number
  exp?: number
  iss: string
  name: string
  sub: string
  nats: { type: string; issuer_account: string; pub: object; sub: object; version: number }
}

const textOf = (value: unknown) => linkTextOf(new TextEncoder().encode(JSON.stringify(value)))

function partsOf(claim: string): { head: string; body: ClaimBody; signature: Uint8Array } {
  const [head = '', body = '', signature = ''] = claim.split('.')
  const [said, signed] = [bytesOfLinkText(body), bytesOfLinkText(signature)]
  if (!said || !signed) throw new RangeError('not a claim')
  return { head, body: JSON.parse(new TextDecoder().decode(said)), signature: signed }
}

/**
 * The link of an invitation at the page beside the hub: some 340 signs, few enough to be scanned from a screen. Of the login's
 * claim it carries what cannot be worked out. Throws a RangeError for a login that would not come back from it the same.
 */
export function invitationLink(page: string, { part, table, login, secret }: Invitation): string {
  const { body, signature } = partsOf(login.claim)
  const moment = (seconds: number) => {
    const bytes = new Uint8Array(sizes.moment)
    new DataView(bytes.buffer).setUint32(0, seconds)
    return bytes
  }
  const signs = (text: string) => new TextEncoder().encode(text)
  const bytes = Uint8Array.from([
    ...[version, partNames.indexOf(part) | (secret ? 0 : unsealed)],
    ...signs(table),
    ...signs(login.name),
    ...(bytesOfLinkText(body.jti) ?? []),
    ...moment(body.iat),
    ...moment(body.exp ?? 0),
    ...bytesOfBase32(body.iss),
    ...bytesOfBase32(body.nats.issuer_account),
    ...signature,
    ...bytesOfBase32(login.seed),
    ...(secret ?? []),
  ])
  const text = linkTextOf(bytes)
  const read = readInvitation(text)
  if (!read.ok || read.invitation.login.claim !== login.claim)
    throw new RangeError('this login does not fit into a link')
  return `${page}#/join/${text}`
}

/** Reads what stands behind `#/join/` of such a link, whole or not at all. */
export function readInvitation(text: string): InvitationRead {
  const bytes = bytesOfLinkText(text)
  if (!bytes || bytes.length < 2) return { ok: false, reason: 'damaged' }
  if ((bytes[0] ?? 0) > version) return { ok: false, reason: 'newer-version' }
  try {
    return { ok: true, invitation: invitationOf(bytes) }
  } catch {
    // What does not read says no more than that signs are missing or changed.
    return { ok: false, reason: 'damaged' }
  }
}

function invitationOf(bytes: Uint8Array): Invitation {
  let at = 2
  const next = (size: number) => {
    if (at + size > bytes.length) throw new RangeError('too short')
    at += size
    return bytes.slice(at - size, at)
  }
  const signs = () => new TextDecoder().decode(next(sizes.name))
  const moment = () => new DataView(next(sizes.moment).buffer).getUint32(0)
  const [table, name, id] = [signs(), signs(), next(sizes.id)]
  const [issuedAt, expiresAt] = [moment(), moment()]
  const [issuer, account] = [base32Of(next(sizes.key)), base32Of(next(sizes.key))]
  const signature = next(sizes.signature)
  const seed = base32Of(next(sizes.seed))
  const flags = bytes[1] ?? 0
  const secret = flags & unsealed ? null : next(sizes.secret)
  const part = partNames[flags & ~unsealed]
  if (at !== bytes.length || part === undefined) throw new RangeError('no such part')
  const body: ClaimBody = {
    ...{ jti: linkTextOf(id), iat: issuedAt, ...(expiresAt === 0 ? {} : { exp: expiresAt }) },
    ...{ iss: issuer, name, sub: keyOfSeed(seed).getPublicKey() },
    nats: { type: 'user', issuer_account: account, pub: {}, sub: {}, version: 2 },
  }
  const claim = `${textOf({ typ: 'JWT', alg: 'ed25519-nkey' })}.${textOf(body)}.${linkTextOf(signature)}`
  return { part, table, login: { name, claim, seed }, secret }
}
