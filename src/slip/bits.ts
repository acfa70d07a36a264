/** Writes numbers of a given width one behind another, the highest bit first. */
export class BitWriter {
  readonly #bits: number[] = []

  /** A whole number from 0 that fits into `width` bits (32 at most). Throws when it does not: a programmer's mistake. */
  number(value: number, width: number): void {
    if (!Number.isInteger(value) || value < 0 || value >= 2 ** width)
      throw new RangeError(`${value} does not fit into ${width} bits`)
    for (let bit = width - 1; bit >= 0; bit -= 1) this.#bits.push(Math.floor(value / 2 ** bit) % 2)
  }

  bytes(bytes: Uint8Array): void {
    for (const byte of bytes) this.number(byte, 8)
  }

  /** What was written, filled up with zeros to whole bytes. */
  done(): Uint8Array {
    const bytes = new Uint8Array(Math.ceil(this.#bits.length / 8))
    for (const [at, bit] of this.#bits.entries())
      bytes[at >> 3] = (bytes[at >> 3] ?? 0) | (bit << (7 - (at & 7)))
    return bytes
  }
}

/** That a slip ends before all was read. */
export class SlipTooShort extends Error {}

/** Reads what a `BitWriter` wrote; throws `SlipTooShort` at the end. */
export class BitReader {
  readonly #bytes: Uint8Array
  #at = 0

  constructor(bytes: Uint8Array) {
    this.#bytes = bytes
  }

  number(width: number): number {
    let value = 0
    for (let bit = 0; bit < width; bit += 1) {
      const byte = this.#bytes[this.#at >> 3]
      if (byte === undefined) throw new SlipTooShort()
      value = value * 2 + ((byte >> (7 - (this.#at & 7))) & 1)
      this.#at += 1
    }
    return value
  }

  bytes(count: number): Uint8Array {
    if (count * 8 > this.#bytes.length * 8 - this.#at) throw new SlipTooShort()
    return Uint8Array.from({ length: count }, () => this.number(8))
  }
}
