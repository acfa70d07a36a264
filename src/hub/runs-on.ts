import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { greetingAt } from './free-port.ts'

/** The file that a hub writes for its message server. */
export const configurationFile = (folder: string): string => join(folder, 'hub.conf')

/** Where its message server writes its process. */
export const processFile = (folder: string): string => join(folder, 'server.pid')

/** The process of a message server that still runs on this folder, as after a hub that was killed; null where none does. */
export async function runsOn(folder: string): Promise<string | null> {
  const file = configurationFile(folder)
  if (!existsSync(file)) return null
  const text = readFileSync(file, 'utf8')
  const [, name] = /^server_name: (\S+)$/m.exec(text) ?? []
  const [, port] = /^listen: "127\.0\.0\.1:(\d+)"$/m.exec(text) ?? []
  if (name === undefined || port === undefined) return null
  const greeting = await greetingAt(Number(port))
  if (!greeting.includes(`"server_name":"${name}"`)) return null
  const written = processFile(folder)
  return existsSync(written) ? readFileSync(written, 'utf8').trim() : 'unknown'
}
