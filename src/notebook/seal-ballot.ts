import { type Ballot, ballotShape } from '@/core/tasting/ballot-record.ts'
import { changeTrial } from './change-trial.ts'
import { checked } from './checked.ts'
import { nextCounts } from './next-counts.ts'
import type { NewBallot } from './notebook.ts'
import { NotebookFailure } from './notebook-failure.ts'
import type { NotebookServices } from './services.ts'
import type { Store } from './store.ts'

/** The ballots of the same taster about the same thing that no later one has replaced. */
const standing = (ballots: readonly Ballot[], ballot: Ballot) => {
  const replaced = new Set(ballots.map((each) => each.replaces))
  return ballots.filter(
    (each) =>
      each.tasterId === ballot.tasterId &&
      each.sessionId === ballot.sessionId &&
      each.about.kind === ballot.about.kind &&
      each.about.id === ballot.about.id &&
      !replaced.has(each.id),
  )
}

/** Appends a taster's ballot. A second one about the same thing must name the one it replaces, so that nobody counts twice. */
export async function sealBallot(
  store: Store,
  { now, newId }: NotebookServices,
  ballot: NewBallot,
): Promise<Ballot> {
  return await changeTrial(store, ballot.trialId, async (whole) => {
    const { device, first: count } = await nextCounts(store, 1)
    const sealed = checked(ballotShape, { ...ballot, id: newId(), device, count, at: now() })
    const before = standing(whole.ballots, sealed)
    const asReplaced = before.some((each) => each.id === sealed.replaces)
    if (before.length > 0 ? !asReplaced : sealed.replaces !== undefined)
      throw new NotebookFailure('refused-record', 'a ballot replaces the standing one, by its id')
    await store.ballots.add(sealed)
    return { now: { ballots: [...whole.ballots, sealed] }, told: sealed }
  })
}
