import { fromSeed, type KeyPair } from '@nats-io/nkeys'
import { linkTextOf } from '@/slip/link-text.ts'

/** What a claim says of its subject, in the words of the message server's own format (JSON Web Token, RFC 7519). */
export interface Claim {
  name: string
  /** The public key that the claim speaks of. */
  subject: string
  /** Seconds since 1970, from the clock of whoever signs. */
  issuedAt: number
  /** Seconds since 1970 after which it is refused; left out where it holds until it is revoked. */
  expiresAt?: number
  says: Record<string, unknown>
}

/** A claim signed with Ed25519 by the key that may issue it, as text. It works on plain http too. */
export function signedClaim(
  { name, subject, issuedAt, expiresAt, says }: Claim,
  issuer: KeyPair,
): string {
  const part = (value: unknown) => linkTextOf(new TextEncoder().encode(JSON.stringify(value)))
  const body = {
    jti: linkTextOf(crypto.getRandomValues(new Uint8Array(16))),
    iat: issuedAt,
    ...(expiresAt === undefined ? {} : { exp: expiresAt }),
    iss: issuer.getPublicKey(),
    name,
    sub: subject,
    nats: { ...says, version: 2 },
  }
  const text = `${part({ typ: 'JWT', alg: 'ed25519-nkey' })}.${part(body)}`
  return `${text}.${linkTextOf(issuer.sign(new TextEncoder().encode(text)))}`
}

/** A key out of its seed as text, which is kept like a password. */
export const keyOfSeed = (seed: string): KeyPair => fromSeed(new TextEncoder().encode(seed))

/** The seed of a key as text. */
export const seedOf = (key: KeyPair): string => new TextDecoder().decode(key.getSeed())
