import { DiscardPolicy, jetstreamManager, RetentionPolicy, StorageType } from '@nats-io/jetstream'
import type { NatsConnection } from '@nats-io/nats-core'
import { streams } from './subjects.ts'

/** Entries that wait for the owner, of one login; what is over it is refused until the owner has taken them. */
const mostWaiting = 64
/** Bytes of one message, sealed. */
const mostBytes = 32_768
const mebibyte = 1024 * 1024

/**
 * Makes the streams of a table where they are not there yet: what is sent waits there for the owner, and nobody, the owner included, can take a message
 * back singly. Of notices each piece keeps its newest state. The four together stay within what a table may keep. `replicas` is that
 * of the ticket: in how many places the hub keeps each.
 */
export async function openStreams(owner: NatsConnection, replicas = 1): Promise<void> {
  const manager = await jetstreamManager(owner)
  const entries = { [streams.work]: 'w.*', [streams.key]: 'k.*', [streams.ballots]: 'b.*' }
  const there = new Set<string>()
  for await (const name of manager.streams.names()) there.add(name)
  for (const [name, subject] of Object.entries(entries)) {
    if (there.has(name)) continue
    await manager.streams.add({
      ...{ name, subjects: [subject], retention: RetentionPolicy.Limits },
      ...{ storage: StorageType.File, discard: DiscardPolicy.New, discard_new_per_subject: true },
      ...{ max_msgs_per_subject: mostWaiting, max_msg_size: mostBytes, max_bytes: 12 * mebibyte },
      ...{ deny_delete: true, duplicate_window: 120_000_000_000, num_replicas: replicas },
    })
  }
  if (there.has(streams.notices)) return
  await manager.streams.add({
    ...{ name: streams.notices, subjects: ['n.>'], retention: RetentionPolicy.Limits },
    ...{ storage: StorageType.File, discard: DiscardPolicy.Old, allow_direct: true },
    ...{ max_msgs_per_subject: 1, max_msg_size: mostBytes, max_bytes: 24 * mebibyte },
    ...{ deny_delete: true, num_replicas: replicas },
  })
}

/** Takes the table off the hub with all that it held there; what the notebooks keep stays. */
export async function closeStreams(owner: NatsConnection): Promise<void> {
  const manager = await jetstreamManager(owner)
  for (const name of Object.values(streams)) await manager.streams.delete(name)
}
