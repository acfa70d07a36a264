import { type Opened, type Outside, open, seal } from '@/table/envelope.ts'
import { keysOf } from '@/table/part-keys.ts'

/** How the messages of one invitation are closed and opened, in both directions. */
export interface Wrapped {
  fromDevice: Direction
  toDevice: Direction
}

export interface Direction {
  close: (outside: Outside, text: string) => Promise<Uint8Array>
  open: (outside: Omit<Outside, 'count'>, bytes: Uint8Array) => Promise<Opened>
}

/** With the secret of an invitation sealed; without one in clear, as an invitation for plain http says of itself. */
export async function wrappedBy(secret: Uint8Array | null): Promise<Wrapped> {
  if (secret === null) return { fromDevice: inClear, toDevice: inClear }
  const keys = await keysOf(secret)
  const direction = (key: CryptoKey): Direction => ({
    close: (outside, text) => seal(key, outside, text),
    open: (outside, bytes) => open(key, outside, bytes),
  })
  return { fromDevice: direction(keys.out), toDevice: direction(keys.in) }
}

/** No seal: a zero, the count, the text. A sealed envelope never begins so, and none is taken for the other. */
const inClear: Direction = {
  close: async ({ count }, text) => {
    const said = new TextEncoder().encode(text)
    const bytes = new Uint8Array(5 + said.length)
    new DataView(bytes.buffer).setUint32(1, count)
    bytes.set(said, 5)
    return bytes
  },
  open: async (_, bytes) => {
    if (bytes.length < 5 || bytes[0] !== 0) return { ok: false, reason: 'not-an-envelope' }
    const own = Uint8Array.from(bytes)
    const count = new DataView(own.buffer).getUint32(1)
    return { ok: true, count, text: new TextDecoder().decode(own.subarray(5)) }
  },
}
