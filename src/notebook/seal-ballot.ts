import { sealOf } from '@/core/seal/sealed.ts'
import { type Ballot, ballotShape } from '@/core/tasting/ballot-record.ts'
import { standingBallots } from '@/core/whole-trial/standing-ballots.ts'
import { changeTrial } from './change-trial.ts'
import { checked } from './checked.ts'
import { nextCounts } from './next-counts.ts'
import type { NewBallot } from './notebook.ts'
import { NotebookFailure } from './notebook-failure.ts'
import type { NotebookServices } from './services.ts'
import type { Store } from './store.ts'

/** Appends a taster's ballot. A second one about the same thing must name the one it replaces, so that nobody counts twice; none is
 * taken once the tasting is over. */
export async function sealBallot(
  store: Store,
  { now, newId }: NotebookServices,
  ballot: NewBallot,
): Promise<Ballot> {
  return await changeTrial(store, ballot.trialId, async (whole) => {
    const { device, first: count } = await nextCounts(store, 1)
    const sealed = checked(ballotShape, { ...ballot, id: newId(), device, count, at: now() })
    const seal = sealOf(whole, sealed.sessionId)
    if (seal === 'closed' || seal === 'unsealed') throw new NotebookFailure('tasting-over', seal)
    const before = standingBallots(whole.ballots, sealed)
    const asReplaced = before.some((each) => each.id === sealed.replaces)
    if (before.length > 0 ? !asReplaced : sealed.replaces !== undefined)
      throw new NotebookFailure('refused-record', 'a ballot replaces the standing one, by its id')
    await store.ballots.add(sealed)
    return { now: { ballots: [...whole.ballots, sealed] }, told: sealed }
  })
}
