/** What an envelope says on its outside, all of it bound to what is inside: a changed word of it opens nothing. */
export interface Outside {
  /** The table's own random name. */
  table: string
  /** The subject it is sent under: who writes, and in which direction. */
  subject: string
  /** The running number of the entry among those of its writer, from 1. */
  count: number
}

export type Opened =
  | { ok: true; count: number; text: string }
  | { ok: false; reason: 'not-an-envelope' | 'newer-version' | 'does-not-open' }

const version = 1
const nonceBytes = 12
const headBytes = 1 + 4 + nonceBytes
const tagBytes = 16
const stepBytes = 256

/** The most bytes of an envelope: what the hub takes in one message. */
export const mostEnvelopeBytes = 32_768

/**
 * Seals a text: version, count, twelve random bytes, then AES-256-GCM (NIST SP 800-38D) of the text padded to steps of 256 bytes,
 * so that a size tells little. The nonce is random: there is no counter that a restored backup or a second phone would repeat.
 * Throws a RangeError for a text that would not fit into one message.
 */
export async function seal(
  key: CryptoKey,
  outside: Outside,
  text: string,
): Promise<Uint8Array<ArrayBuffer>> {
  const padded = withPadding(new TextEncoder().encode(text))
  const sealed = new Uint8Array(headBytes + padded.length + tagBytes)
  if (sealed.length > mostEnvelopeBytes)
    throw new RangeError(`${sealed.length} bytes do not fit into one message`)
  sealed[0] = version
  new DataView(sealed.buffer).setUint32(1, outside.count)
  const nonce = crypto.getRandomValues(new Uint8Array(nonceBytes))
  sealed.set(nonce, 5)
  const inside = await crypto.subtle.encrypt(
    { name: 'AES-GCM', iv: nonce, additionalData: bound(outside) },
    key,
    padded,
  )
  sealed.set(new Uint8Array(inside), headBytes)
  return sealed
}

/**
 * Opens an envelope that came under a subject of a table. Wrong key, table, subject or count, a changed byte and junk all open
 * nothing, and nothing throws.
 */
export async function open(
  key: CryptoKey,
  { table, subject }: Omit<Outside, 'count'>,
  sealed: Uint8Array,
): Promise<Opened> {
  if (sealed.length < headBytes + stepBytes + tagBytes || sealed.length > mostEnvelopeBytes)
    return { ok: false, reason: 'not-an-envelope' }
  if (sealed[0] !== version)
    return { ok: false, reason: (sealed[0] ?? 0) > version ? 'newer-version' : 'not-an-envelope' }
  const bytes = Uint8Array.from(sealed)
  const count = new DataView(bytes.buffer).getUint32(1)
  try {
    const padded = await crypto.subtle.decrypt(
      {
        name: 'AES-GCM',
        iv: bytes.slice(5, headBytes),
        additionalData: bound({ table, subject, count }),
      },
      key,
      bytes.slice(headBytes),
    )
    return { ok: true, count, text: new TextDecoder().decode(withoutPadding(padded)) }
  } catch {
    // The cipher says no more than that: what is altered, foreign or sealed with another key does not open.
    return { ok: false, reason: 'does-not-open' }
  }
}

const bound = ({ table, subject, count }: Outside) =>
  new TextEncoder().encode(JSON.stringify([version, table, subject, count]))

/** Four bytes of length, the text, then zeros up to the next step. */
function withPadding(text: Uint8Array): Uint8Array<ArrayBuffer> {
  const padded = new Uint8Array(Math.ceil((4 + text.length) / stepBytes) * stepBytes)
  new DataView(padded.buffer).setUint32(0, text.length)
  padded.set(text, 4)
  return padded
}

const withoutPadding = (padded: ArrayBuffer) =>
  new Uint8Array(padded, 4, new DataView(padded).getUint32(0))
