import { connect, createServer, type Socket } from 'node:net'

/** A way to a port of this machine that can be cut, as a street between two kitchens, and mended. */
export interface CutLink {
  port: number
  cut: () => void
  mend: () => void
  close: () => Promise<void>
}

export async function cutLink(to: number): Promise<CutLink> {
  let whole = true
  const lines = new Set<Socket>()
  const server = createServer((line) => {
    if (!whole) return line.destroy()
    const on = connect(to, '127.0.0.1')
    for (const [one, other] of [
      [line, on],
      [on, line],
    ] as const) {
      lines.add(one)
      one.pipe(other)
      // A line that is cut says so to both ends, which try anew.
      one.on('error', () => other.destroy())
      one.on('close', () => {
        lines.delete(one)
        other.destroy()
      })
    }
  })
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done))
  const address = server.address()
  if (address === null || typeof address === 'string') throw new Error('no port')
  const cut = () => {
    whole = false
    for (const line of lines) line.destroy()
  }
  return {
    port: address.port,
    cut,
    mend: () => {
      whole = true
    },
    close: async () => {
      cut()
      await new Promise((done) => server.close(done))
    },
  }
}
