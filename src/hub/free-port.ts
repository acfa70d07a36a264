import { connect, createServer } from 'node:net'

/** A port of this machine that nobody uses now. */
export async function freePort(): Promise<number> {
  const server = createServer()
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done))
  const address = server.address()
  await new Promise((done) => server.close(done))
  if (address === null || typeof address === 'string') throw new Error('no port')
  return address.port
}

export type NoListening = 'port-in-use' | 'not-this-machine' | 'not-allowed'

const reasons: Readonly<Record<string, NoListening>> = {
  EADDRINUSE: 'port-in-use',
  EADDRNOTAVAIL: 'not-this-machine',
  ENOTFOUND: 'not-this-machine',
  EACCES: 'not-allowed',
}

/** What keeps from listening on an address; null where nothing does. Throws what it does not know. */
export async function noListening(host: string, port: number): Promise<NoListening | null> {
  const server = createServer()
  try {
    await new Promise<void>((done, fail) => {
      server.once('error', fail)
      server.listen({ host, port, exclusive: true }, done)
    })
    await new Promise((done) => server.close(done))
    return null
  } catch (failure) {
    const reason = reasons[Object(failure).code]
    if (reason === undefined) throw failure
    return reason
  }
}

/** What a message server on a port of this machine says first; an empty text where none answers within a second. */
export async function greetingAt(port: number): Promise<string> {
  return await new Promise((done) => {
    const line = connect(port, '127.0.0.1')
    const end = (text: string) => {
      line.destroy()
      done(text)
    }
    line.setTimeout(1000, () => end(''))
    line.once('error', () => end(''))
    line.once('data', (piece) => end(String(piece)))
  })
}
