import { jetstreamManager } from '@nats-io/jetstream'
import type { NatsConnection } from '@nats-io/nats-core'
import { noticeUnder, streams } from '@/table/subjects.ts'
import { answered } from './answered.ts'

/**
 * How much later this device's clock stands than the hub's, in milliseconds, a little over: the owner leaves a word at the hub and
 * looks when the hub took it in. Entries that waited there while the owner was away would say far too much. Null without an answer.
 */
export async function laterThanHub(
  line: NatsConnection,
  login: string,
  now: () => number,
): Promise<number | null> {
  const subject = noticeUnder(login, 0)
  if (!(await answered(line, subject, 'what time is it'))) return null
  const heardAt = now()
  const manager = await jetstreamManager(line)
  const kept = await manager.direct.getMessage(streams.notices, { last_by_subj: subject })
  return kept ? heardAt - kept.time.getTime() : null
}
