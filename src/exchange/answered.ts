import type { Msg, NatsConnection } from '@nats-io/nats-core'

const patienceMilliseconds = 5000

/** The hub's answer; null where none came in time or the line was cut, which is not a failure: it is asked again. */
export async function answered(
  line: NatsConnection,
  subject: string,
  body: Uint8Array | string,
): Promise<Msg | null> {
  if (line.isClosed()) return null
  try {
    return await line.request(subject, body, { timeout: patienceMilliseconds })
  } catch {
    return null
  }
}
