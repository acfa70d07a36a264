/** The keys of one invited device: what it sends, and what it is sent. */
export interface PartKeys {
  out: CryptoKey
  in: CryptoKey
}

const secretBytes = 16

/**
 * The secret of one invitation out of the master secret of a table, by HKDF-SHA-256 (RFC 5869): 16 bytes. Whoever holds it can
 * find neither the master nor the secret of another invitation, so that a taster's key opens no entry of the bench.
 */
export async function secretOf(
  master: Uint8Array,
  login: string,
): Promise<Uint8Array<ArrayBuffer>> {
  return new Uint8Array(await derived(master, `invitation ${login}`, secretBytes))
}

/** The keys that follow from the secret of an invitation, one for each direction. They cannot be read out again. */
export async function keysOf(secret: Uint8Array): Promise<PartKeys> {
  const key = async (direction: string) =>
    await crypto.subtle.importKey('raw', await derived(secret, direction, 32), 'AES-GCM', false, [
      'encrypt',
      'decrypt',
    ])
  return { out: await key('from the device'), in: await key('to the device') }
}

/** Whether this page can seal: only where it came by https or from this machine. */
export const canSeal = (): boolean => globalThis.crypto?.subtle !== undefined

async function derived(secret: Uint8Array, what: string, bytes: number): Promise<ArrayBuffer> {
  const from = await crypto.subtle.importKey('raw', Uint8Array.from(secret), 'HKDF', false, [
    'deriveBits',
  ])
  const info = new TextEncoder().encode(`evenhand table: ${what}`)
  return await crypto.subtle.deriveBits(
    { name: 'HKDF', hash: 'SHA-256', salt: new Uint8Array(), info },
    from,
    bytes * 8,
  )
}
