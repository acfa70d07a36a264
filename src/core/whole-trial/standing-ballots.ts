import type { Ballot } from '@/core/tasting/ballot-record.ts'

/**
 * The ballots of the same taster about the same thing as `ballot` that no later one has replaced. One that voids another stands
 * for nothing: its taster is asked again, and what they seal then replaces none.
 */
export function standingBallots(
  ballots: readonly Ballot[],
  { tasterId, sessionId, about }: Pick<Ballot, 'tasterId' | 'sessionId' | 'about'>,
): Ballot[] {
  const replaced = new Set(ballots.map((each) => each.replaces))
  return ballots.filter(
    (each) =>
      each.tasterId === tasterId &&
      each.sessionId === sessionId &&
      each.about.kind === about.kind &&
      each.about.id === about.id &&
      !replaced.has(each.id) &&
      !each.change?.voids,
  )
}
