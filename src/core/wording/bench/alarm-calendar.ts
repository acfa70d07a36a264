import { createEvents, type EventAttributes } from 'ics'

interface AlarmCalendar {
  trialId: string
  session: number
  /** UTC ms. */
  writtenAt: number
  alarms: readonly { key: string; at: number; text: string }[]
}

/**
 * The alarms that are still to come as a calendar file (RFC 5545), each an event of a minute with an alarm at its moment, in UTC. Ids
 * hold from file to file, so that a later one moves the alarms instead of doubling them. Names no level. Written by the package
 * ics.
 */
export function alarmCalendar({ trialId, session, writtenAt, alarms }: AlarmCalendar): string {
  const events = alarms.map(
    ({ key, at, text }) =>
      ({
        uid: `${trialId}-${session}-${key.replaceAll(/[^A-Za-z0-9]+/g, '-')}@evenhand`,
        title: text,
        start: at,
        end: at + 60_000,
        ...{
          startInputType: 'utc',
          startOutputType: 'utc',
          endInputType: 'utc',
          endOutputType: 'utc',
        },
        alarms: [{ action: 'display', description: text, trigger: at }],
        productId: 'evenhand',
        sequence: Math.floor(writtenAt / 1000) % 2_000_000_000,
        timestamp: writtenAt,
      }) as EventAttributes,
  )
  const { error, value } = createEvents(events)
  if (error || !value) throw new Error(`no calendar was written: ${String(error)}`)
  return value
}
