import { AckPolicy, jetstream, jetstreamManager } from '@nats-io/jetstream'
import type { NatsConnection } from '@nats-io/nats-core'
import { streams } from '@/table/subjects.ts'
import { paused } from './held-line.ts'

/** One message as the hub gives it to the owner. */
export interface Arrived {
  subject: string
  data: Uint8Array
  /** When the hub took it in, UTC milliseconds by its clock. */
  storedAt: number
}

const reader = 'owner'
const together = 64
const waitMilliseconds = 2000

/**
 * Reads what was sent to the owner, stream by stream in its order, until the line ends. What was taken in is acknowledged, and
 * then removed from the hub, so that its login has room for more. What is not taken in comes again.
 */
export async function readArriving(
  line: NatsConnection,
  ended: AbortSignal,
  take: (arrived: Arrived) => Promise<void>,
): Promise<void> {
  const manager = await jetstreamManager(line)
  const names = [streams.work, streams.key, streams.ballots]
  for (const name of names)
    await manager.consumers.add(name, { durable_name: reader, ack_policy: AckPolicy.Explicit })
  const read = async (stream: string) => {
    const consumer = await jetstream(line).consumers.get(stream, reader)
    while (!ended.aborted) {
      const last = new Map<string, number>()
      const batch = await consumer.fetch({ max_messages: together, expires: waitMilliseconds })
      const end = () => batch.stop()
      ended.addEventListener('abort', end, { once: true })
      for await (const message of batch) {
        const storedAt = message.time.getTime()
        await take({ subject: message.subject, data: message.data, storedAt })
        message.ack()
        last.set(message.subject, message.seq)
      }
      ended.removeEventListener('abort', end)
      for (const [filter, seq] of last)
        await manager.streams.purge(stream, { filter, seq: seq + 1 })
    }
  }
  const keepReading = async (stream: string) => {
    while (!ended.aborted) {
      try {
        await read(stream)
      } catch (failure) {
        if (ended.aborted || line.isClosed()) return
        if (!(failure instanceof Error)) throw failure
        await paused(500, ended)
      }
    }
  }
  await Promise.all(names.map(keepReading))
}
