const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ234567'

/** Bytes as the message server writes its keys: base32 (RFC 4648, section 6), without padding. */
export function base32Of(bytes: Uint8Array): string {
  let bits = ''
  for (const byte of bytes) bits += byte.toString(2).padStart(8, '0')
  return (bits.match(/.{1,5}/g) ?? [])
    .map((five) => letters[Number.parseInt(five.padEnd(5, '0'), 2)])
    .join('')
}

/** The bytes of such text. Throws a RangeError for a sign that is none of it. */
export function bytesOfBase32(text: string): Uint8Array<ArrayBuffer> {
  let bits = ''
  for (const sign of text) {
    const value = letters.indexOf(sign)
    if (value < 0) throw new RangeError(`${sign} is no sign of base32`)
    bits += value.toString(2).padStart(5, '0')
  }
  return Uint8Array.from(bits.match(/.{8}/g) ?? [], (eight) => Number.parseInt(eight, 2))
}
