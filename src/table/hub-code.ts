import { fromPublic } from '@nats-io/nkeys'
import { keyOfSeed } from './claims.ts'

/**
 * What a hub gives to whoever may open tables at it, as one link: the address of the app beside it, then the desk's account and
 * the seed of the key that lets in there. It stands behind the #, so that no server is sent it, and is kept like a password.
 */
export interface HubCode {
  /** Address of the app beside the hub, such as https://kitchen.example:4173/. */
  page: string
  /** Public key of the account in which the hub is asked. */
  account: string
  seed: string
}

export type HubCodeRead =
  | { ok: true; code: HubCode }
  /** `no-address`: it does not begin with one. `no-code`: an address alone. `damaged`: signs are missing or changed. */
  | { ok: false; reason: 'no-address' | 'no-code' | 'damaged' }

const mark = '#/hub/'

export const hubCodeText = ({ page, account, seed }: HubCode): string =>
  `${page}${mark}${account}.${seed}`

/** Reads such a link as it was scanned or pasted; white space around and within it does not matter. */
export function readHubCode(text: string): HubCodeRead {
  const [before = '', after] = text.replaceAll(/\s/g, '').split(mark)
  const page = pageOf(before)
  if (page === null) return { ok: false, reason: 'no-address' }
  if (after === undefined || after === '') return { ok: false, reason: 'no-code' }
  const [account = '', seed = ''] = after.split('.')
  try {
    // Both carry a check of their own signs; the last of a seed has two bits to spare, which are none.
    if (!/^A[A-Z2-7]{55}$/.test(account) || !/^SA[A-Z2-7]{55}[AEIMQUY4]$/.test(seed))
      return { ok: false, reason: 'damaged' }
    fromPublic(account)
    keyOfSeed(seed)
    return { ok: true, code: { page, account, seed } }
  } catch {
    // What does not read says no more than that.
    return { ok: false, reason: 'damaged' }
  }
}

/** The page's address out of what was typed, with its last slash; null where it is none of http or https. */
function pageOf(text: string): string | null {
  if (!URL.canParse(text)) return null
  const { protocol, origin, pathname } = new URL(text)
  if (protocol !== 'http:' && protocol !== 'https:') return null
  return `${origin}${pathname.endsWith('/') ? pathname : `${pathname}/`}`
}

/** Where the messages of a hub go: it stands on the same port as the app beside it. */
export const messagesAt = (page: string): string => page.replace(/^http/, 'ws')

export type Reach =
  | { ok: true }
  /** `needs-https`: this page came by https, and browsers let it talk to none but such. `other-host`: its own policy forbids. */
  | { ok: false; reason: 'needs-https' | 'other-host' }

/**
 * Whether a page may talk to a hub at all, asked before anything is sent: to the one it came from, and to those that its own policy
 * names (the text of its meta element; null for a page without one). From a page of https browsers let none but https be reached,
 * this machine excepted (W3C Mixed Content).
 */
export function reachOf(hubPage: string, from: { origin: string; policy: string | null }): Reach {
  const hub = new URL(hubPage)
  const named = from.policy?.match(/connect-src ([^;]*)/)?.[1]?.split(' ') ?? []
  const allowed = hub.origin === from.origin || named.includes(messagesAt(hub.origin))
  if (from.policy !== null && !allowed) return { ok: false, reason: 'other-host' }
  const here = ['localhost', '127.0.0.1', '[::1]'].includes(hub.hostname)
  if (from.origin.startsWith('https:') && hub.protocol === 'http:' && !here)
    return { ok: false, reason: 'needs-https' }
  return { ok: true }
}
