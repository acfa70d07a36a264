/** How many decimal digits hold so many bytes: seven bytes in 17 digits, and a tail of fewer in as few as will do. */
const digitsFor = [0, 3, 5, 8, 10, 13, 15, 17]

/** Bytes as decimal digits: what a scan code packs closest, and what no reader takes for text of another alphabet. */
export function digitsOf(bytes: Uint8Array): string {
  let digits = ''
  for (let at = 0; at < bytes.length; at += 7) {
    const part = bytes.subarray(at, at + 7)
    const value = part.reduce((sum, byte) => sum * 256n + BigInt(byte), 0n)
    digits += value.toString().padStart(digitsFor[part.length] ?? 17, '0')
  }
  return digits
}

/** The bytes that decimal digits stand for; null where they stand for none. */
export function bytesOfDigits(digits: string): Uint8Array | null {
  if (!/^[0-9]+$/.test(digits)) return null
  const bytes: number[] = []
  for (let at = 0; at < digits.length; at += 17) {
    const part = digits.slice(at, at + 17)
    const count = digitsFor.indexOf(part.length)
    let value = BigInt(part)
    if (count < 1 || value >= 1n << BigInt(8 * count)) return null
    const own: number[] = []
    for (let byte = 0; byte < count; byte += 1) {
      own.unshift(Number(value & 255n))
      value >>= 8n
    }
    bytes.push(...own)
  }
  return Uint8Array.from(bytes)
}
