import { createServer as plainServer, type RequestListener, type Server } from 'node:http'
import { createServer as secretServer } from 'node:https'
import { preview } from 'vite'

export interface DoorsAsked {
  port: number
  /** The address in the network; null for this machine alone. */
  lan: string | null
  /** Folder of the built app; null for none. */
  app: string | null
}

export interface Doors {
  servers: Server[]
  close: () => Promise<void>
}

/**
 * Opens the doors of a hub: on this machine always plain, which browsers trust here as they trust https, so that a notebook kept
 * under that address is the same with the hub as without; in the network by https where a certificate is given. The app comes
 * with the headers and the policy of `npm start`, since the same server of files gives it.
 */
export async function doors(
  { port, lan, app }: DoorsAsked,
  secret: { cert: Buffer; key: Buffer } | null,
  names: readonly string[],
): Promise<Doors> {
  const closes: (() => Promise<void>)[] = []
  const opened = async (server: Server, host: string): Promise<Server> => {
    await new Promise<void>((done, fail) => {
      server.once('error', fail)
      server.listen(port, host, done)
    })
    closes.push(async () => {
      const closed = new Promise((done) => server.close(done))
      server.closeAllConnections()
      await closed
    })
    return server
  }
  const files = app === null ? null : await filesOf(app, port, names)
  if (files) closes.push(() => files.close())
  const listener: RequestListener = files?.middlewares ?? nothingHere
  const servers = [
    // Vite may serve by HTTP/2 in other settings; a preview without https is a plain server.
    (files?.httpServer as Server | undefined) ?? (await opened(plainServer(listener), '127.0.0.1')),
  ]
  if (lan !== null)
    servers.push(await opened(secret ? secretServer(secret, listener) : plainServer(listener), lan))
  return {
    servers,
    close: async () => {
      for (const close of closes.toReversed()) await close()
    },
  }
}

const filesOf = (app: string, port: number, names: readonly string[]) =>
  preview({
    logLevel: 'silent',
    build: { outDir: app },
    preview: { host: '127.0.0.1', port, strictPort: true, allowedHosts: [...names] },
  })

const nothingHere: RequestListener = (_, answer) => {
  answer.writeHead(404, { 'Content-Type': 'text/plain' })
  answer.end('This hub carries messages alone; the app is elsewhere.\n')
}
