import type { IncomingMessage, Server } from 'node:http'
import { connect } from 'node:net'
import { type Duplex, pipeline } from 'node:stream'
import { Slowed } from './slowed.ts'

export interface MessageWay {
  /** Pages that may connect, by origin. */
  origins: ReadonlySet<string>
  /** The message server's own port on this machine, and the one origin that it lets in. */
  inner: { port: number; origin: string }
}

/**
 * Leads WebSockets that come to a server of files on to the message server, so that both have one address and the app's own policy
 * (`connect-src 'self'`) lets its page speak to the hub it came from. Another's page is refused; so is what is no WebSocket.
 * Gives what cuts all of them off.
 */
export function leadMessages(server: Server, { origins, inner }: MessageWay): () => void {
  const open = new Set<Duplex>()
  server.on('upgrade', (request: IncomingMessage, socket: Duplex, first: Buffer) => {
    const { origin, upgrade, 'sec-websocket-key': key } = request.headers
    if (origin !== undefined && !origins.has(origin)) return refuse(socket, '403 Forbidden')
    if (upgrade?.toLowerCase() !== 'websocket' || !key) return refuse(socket, '400 Bad Request')
    const way = connect(inner.port, '127.0.0.1')
    open.add(socket)
    way.write(
      [
        'GET / HTTP/1.1',
        `Host: 127.0.0.1:${inner.port}`,
        'Upgrade: websocket',
        'Connection: Upgrade',
        `Origin: ${inner.origin}`,
        `Sec-WebSocket-Key: ${key}`,
        'Sec-WebSocket-Version: 13',
        '\r\n',
      ].join('\r\n'),
    )
    way.write(first)
    const over = () => {
      open.delete(socket)
      socket.destroy()
      way.destroy()
    }
    // Either end may go at any moment, as phones do: then the other goes too, and there is nobody to be told.
    pipeline(socket, new Slowed(), way, over)
    pipeline(way, socket, over)
  })
  return () => {
    for (const socket of open) socket.destroy()
  }
}

function refuse(socket: Duplex, status: string): void {
  socket.end(`HTTP/1.1 ${status}\r\nConnection: close\r\nContent-Length: 0\r\n\r\n`)
}
