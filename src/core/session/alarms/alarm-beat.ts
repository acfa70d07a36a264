import { type Alarm, rungBetween, stillCalled } from './day-alarms.ts'

/** What was due while nothing could ring, until somebody has read of it; times in UTC ms. */
export interface Unheard {
  /** Of the alarm. */
  key: string
  dueAt: number
  /** When it was told, on a page in sight; null before. */
  toldAt: number | null
}

/** How a page stands when it looks what is due. */
export interface AlarmBeat {
  /** Up to here it has looked already, and now (UTC ms). */
  since: number
  now: number
  /** When each thing was called to (UTC ms, by its key). */
  called: ReadonlyMap<string, number>
  unheard: readonly Unheard[]
  /** Whether the bell could sound all the while since. */
  couldRing: boolean
  /** Whether the page is in sight. */
  inSight: boolean
}

/**
 * What one look at the alarms comes to: `call` are those to call to now (a buzz, a note of the system), each once; `tellsNow`
 * where something unheard comes into sight for the first time, which rings once for all of it. What has left the list of alarms,
 * since it was done, needs no telling. `unheard` stays the same array where nothing changed.
 */
export function alarmBeat(alarms: readonly Alarm[], beat: AlarmBeat) {
  const { since, now, couldRing, inSight } = beat
  const known = stillCalled(beat.called, alarms, now)
  const due = rungBetween(alarms, since, now).filter(({ key }) => !known.has(key))
  const called = new Map([...known, ...due.map(({ key, at }) => [key, at] as const)])
  const missed = couldRing ? [] : due
  const waiting = new Set(alarms.map(({ key }) => key))
  for (const { key } of missed) waiting.delete(key)
  const before = beat.unheard.filter(({ key }) => waiting.has(key))
  const all = [...before, ...missed.map(({ key, at }) => ({ key, dueAt: at, toldAt: null }))]
  const tellsNow = inSight && all.some(({ toldAt }) => toldAt === null)
  const changed = tellsNow || missed.length > 0 || before.length < beat.unheard.length
  return {
    called,
    call: couldRing || !inSight ? due : [],
    tellsNow,
    unheard: changed
      ? all.map((one) => (inSight ? { ...one, toldAt: one.toldAt ?? now } : one))
      : beat.unheard,
  }
}

/** As it is kept for the next visit: a line each. */
export const unheardLines = (unheard: readonly Unheard[]): string =>
  unheard.map(({ key, dueAt, toldAt }) => `${dueAt} ${toldAt ?? '-'} ${key}`).join('\n')

export function unheardOf(lines: string): Unheard[] {
  return lines.split('\n').flatMap((line) => {
    const [, due, told, key] = /^(\d+) (\d+|-) (.+)$/.exec(line) ?? []
    if (due === undefined || key === undefined) return []
    return [{ key, dueAt: Number(due), toldAt: told === '-' ? null : Number(told) }]
  })
}
