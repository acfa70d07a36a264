import { createEvents, type EventAttributes } from 'ics'

/** One thing of a day with an alarm at its begin; moments in UTC ms. */
export interface AlarmedEvent {
  /** The same from file to file. */
  key: string
  title: string
  description?: string
  beginAt: number
  endAt: number
}

interface AlarmedCalendar {
  /** The trial's id and the session's number, of which the events' ids are made. */
  trialId: string
  session: number
  /** When the file is written, UTC ms. */
  writtenAt: number
  events: readonly AlarmedEvent[]
}

/**
 * A calendar file (RFC 5545) of a session: each event with an alarm at its begin, in UTC so that every calendar shows it by its
 * own zone. Ids are stable, so that importing a newer file moves the events instead of doubling them. Written by the package
 * ics.
 */
export function alarmedCalendar({ trialId, session, writtenAt, events }: AlarmedCalendar): string {
  const written = events.map(
    ({ key, title, description, beginAt, endAt }) =>
      ({
        uid: `${trialId}-${session}-${key.replaceAll(/[^A-Za-z0-9]+/g, '-')}@evenhand`,
        title,
        ...(description ? { description } : {}),
        start: beginAt,
        end: endAt,
        ...{
          startInputType: 'utc',
          startOutputType: 'utc',
          endInputType: 'utc',
          endOutputType: 'utc',
        },
        alarms: [{ action: 'display', description: title, trigger: beginAt }],
        productId: 'evenhand',
        sequence: Math.floor(writtenAt / 1000) % 2_000_000_000,
        timestamp: writtenAt,
      }) as EventAttributes,
  )
  const { error, value } = createEvents(written)
  if (error || !value) throw new Error(`no calendar was written: ${String(error)}`)
  return value
}
