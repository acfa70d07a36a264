import type { Ballot } from './ballot-record.ts'

/**
 * The ballots that count: those that no other replaces, and of several by one taster about one serving or set the last (by
 * count on one device, by stamp, then id, across devices). Late ones and voided ones count for nothing. In order of their
 * stamp. Of one session, when asked.
 */
export function effectiveBallots(ballots: readonly Ballot[], sessionId?: string): Ballot[] {
  const own = ballots.filter(
    (ballot) => !ballot.late && (sessionId === undefined || ballot.sessionId === sessionId),
  )
  const replaced = new Set(
    own.flatMap(({ id, replaces }) =>
      replaces === undefined || replaces === id ? [] : [replaces],
    ),
  )
  const last = new Map<string, Ballot>()
  for (const ballot of own) {
    if (replaced.has(ballot.id)) continue
    const key = `${ballot.sessionId} ${ballot.tasterId} ${ballot.about.kind} ${ballot.about.id}`
    const known = last.get(key)
    if (!known || comesAfter(ballot, known)) last.set(key, ballot)
  }
  return [...last.values()]
    .filter(({ change }) => !change?.voids)
    .toSorted((one, other) => (comesAfter(one, other) ? 1 : -1))
}

function comesAfter(one: Ballot, other: Ballot): boolean {
  if (one.device === other.device && one.count !== other.count) return one.count > other.count
  return one.at === other.at ? one.id > other.id : one.at > other.at
}
