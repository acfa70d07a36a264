import { hmac } from '@noble/hashes/hmac.js'
import { sha256 } from '@noble/hashes/sha2.js'

/** Bytes of a host's secret, of a taster's key, of the check on a slip and of the seal on its return. */
export const sizes = { secret: 16, key: 16, check: 4, seal: 8 } as const

/**
 * The key of one slip: HMAC-SHA-256 of slot and issue under the host's secret, cut to 16 bytes. A slip holds its own key alone,
 * so that nobody can answer in the place of another by what stands in theirs.
 */
export function slipKey(secret: Uint8Array, slot: number, issue: number): Uint8Array {
  return hmac(sha256, secret, Uint8Array.from([slot, issue])).slice(0, sizes.key)
}

/** The seal on a return: HMAC-SHA-256 of its bytes under the slip's key, cut to 8 bytes. */
export function returnSeal(key: Uint8Array, bytes: Uint8Array): Uint8Array {
  return hmac(sha256, key, bytes).slice(0, sizes.seal)
}

/** The check on a slip, by which a link that was cut or mistyped is known: SHA-256, cut to 4 bytes. Anybody can make one. */
export function slipCheck(bytes: Uint8Array): Uint8Array {
  return sha256(bytes).slice(0, sizes.check)
}

export function sameBytes(one: Uint8Array, other: Uint8Array): boolean {
  return one.length === other.length && one.every((byte, at) => byte === other[at])
}
