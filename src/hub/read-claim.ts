import { fromPublic } from '@nats-io/nkeys'
import { bytesOfLinkText } from '@/slip/link-text.ts'

/** What a signed claim says, with who signed it and when (seconds since 1970). */
export interface ClaimRead {
  issuer: string
  subject: string
  issuedAt: number
  says: Readonly<Record<string, unknown>>
}

/** Reads a claim that is signed by the key it names; null for anything else. Whether that key may say it is another question. */
export function readClaim(text: string): ClaimRead | null {
  const parts = text.split('.')
  const [, body, signature] = parts.map(bytesOfLinkText)
  if (parts.length !== 3 || !body || !signature) return null
  try {
    const { iss, sub, iat, nats } = JSON.parse(new TextDecoder().decode(body))
    const signed = new TextEncoder().encode(parts.slice(0, 2).join('.'))
    if (typeof iat !== 'number' || !fromPublic(iss).verify(signed, signature)) return null
    return { issuer: iss, subject: sub, issuedAt: iat, says: Object(nats) }
  } catch {
    // No JSON, or no key: nobody has signed that.
    return null
  }
}
