import { X509Certificate } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { isIP } from 'node:net'
import { createSecureContext } from 'node:tls'
import { wordsOf } from './hub-trouble.ts'

export interface CertificateFiles {
  cert: string
  key: string
}

export type CertificateRead =
  | { ok: true; cert: Buffer; key: Buffer }
  | {
      ok: false
      /** `not-a-pair`: one of the two does not read, or the key belongs to another. */
      reason: 'cannot-read' | 'not-a-pair' | 'ran-out' | 'other-name'
      file: string
      why: string
    }

/** Reads a certificate with its key and asks of it what a browser would ask: that it holds now, and for this name. */
export function certificateOf(files: CertificateFiles, host: string, now: Date): CertificateRead {
  const read = (file: string) => {
    try {
      return { ok: true as const, bytes: readFileSync(file) }
    } catch (failure) {
      return { ok: false as const, reason: 'cannot-read' as const, file, why: wordsOf(failure) }
    }
  }
  const [cert, key] = [read(files.cert), read(files.key)]
  if (!cert.ok) return cert
  if (!key.ok) return key
  const no = (reason: 'not-a-pair' | 'ran-out' | 'other-name', why: string) =>
    ({ ok: false, reason, file: files.cert, why }) as const
  try {
    createSecureContext({ cert: cert.bytes, key: key.bytes })
  } catch (failure) {
    return no('not-a-pair', wordsOf(failure))
  }
  const first = new X509Certificate(cert.bytes)
  if (new Date(first.validTo) < now) return no('ran-out', first.validTo)
  const fits = isIP(host) ? first.checkIP(host) : first.checkHost(host)
  if (!fits) return no('other-name', (first.subjectAltName ?? first.subject).replaceAll('\n', ', '))
  return { ok: true, cert: cert.bytes, key: key.bytes }
}
