import type { Session } from '@/core/session/session-record.ts'
import type { Ballot } from './ballot-record.ts'
import type { TastingRecords } from './tasting-records.ts'

/** What a ballot says: its scores, or the order, the pick of a set or the guess at the end. */
export type SaidInBallot = Pick<Ballot, 'about' | 'answers' | 'pickedCode' | 'guessOf' | 'ranked'>

/** A ballot that does not stand as it was first sealed, or came too late to count. */
export interface BallotChange {
  id: string
  what: 'changed' | 'voided' | 'late'
  sessionNumber: number
  tasterId: string
  /** What it is of. */
  of: Ballot['about']['kind']
  /** The code of its serving, the codes of its set in their order; none for the order and the guess at the end. */
  codes: string[]
  at: number
  zone: string
  /** What was sealed first; null for one that is late. */
  original: SaidInBallot | null
  /** What takes its place, or what a late one says; null where it was voided. */
  now: SaidInBallot | null
  /** Who changed it, and why; null where nobody said. */
  by: string | null
  because: string | null
  /** Of a late one: who typed it from paper, where it came so, and whether the codes were open by then. */
  late: { typedBy: string | null; codesOpen: boolean } | null
}

/**
 * Every ballot that was changed or voided, with what it first said, who did it and why; and those that came after the tasting
 * was over, which stand in no finding. In the order in which it was done.
 */
export function ballotChanges({
  sessions,
  events,
  ballots,
}: Pick<TastingRecords, 'sessions' | 'events' | 'ballots'>): BallotChange[] {
  const byId = new Map(ballots.map((ballot) => [ballot.id, ballot]))
  const changes = ballots.flatMap((ballot): BallotChange[] => {
    const before = ballot.replaces === undefined ? undefined : byId.get(ballot.replaces)
    if (!before && !ballot.late) return []
    const session = sessions.find(({ id }) => id === ballot.sessionId)
    if (!session) return []
    const voided = ballot.change?.voids === true
    const opened = events.find(
      ({ kind, sessionId }) => kind === 'unsealed' && sessionId === session.id,
    )
    return [
      {
        id: ballot.id,
        what: ballot.late ? 'late' : voided ? 'voided' : 'changed',
        sessionNumber: session.number,
        tasterId: ballot.tasterId,
        ...ofBallot(session, ballot),
        at: ballot.at,
        zone: session.zone,
        original: before ?? null,
        now: voided ? null : ballot,
        by: ballot.change?.by ?? null,
        because: ballot.change?.because ?? null,
        late: ballot.late
          ? {
              typedBy: ballot.cameBy?.way === 'paper' ? ballot.cameBy.typedBy : null,
              codesOpen: opened !== undefined && opened.at <= ballot.at,
            }
          : null,
      },
    ]
  })
  return changes.toSorted((one, other) => one.at - other.at)
}

/** What a ballot of a session is of, and under which codes. */
export function ofBallot(
  { dealt }: Session,
  { about }: Pick<Ballot, 'about'>,
): Pick<BallotChange, 'of' | 'codes'> {
  const set = dealt.sets.find(({ id }) => id === about.id)
  const codes = set?.samples ?? dealt.servings.filter(({ id }) => id === about.id)
  return { of: about.kind, codes: codes.map(({ code }) => code) }
}
