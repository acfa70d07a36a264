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

/** Appends a taster's ballot. A second one about the same thing must name the one it replaces, so that nobody counts twice. Once
 * the tasting is over none is taken but one that says it is late, which is kept apart and counts for nothing. */
export async function sealBallot(
  store: Store,
  { now, newId }: NotebookServices,
  ballot: NewBallot,
): Promise<Ballot> {
  return await changeTrial(store, ballot.trialId, async (whole) => {
    const { device, first: count } = await nextCounts(store, 1)
    // What is changed was tasted when the first was.
    const { position } = whole.ballots.find(({ id }) => id === ballot.replaces) ?? {}
    const told = { ...(position === undefined ? {} : { position }), ...ballot }
    const sealed = checked(ballotShape, { ...told, id: newId(), device, count, at: now() })
    const seal = sealOf(whole, sealed.sessionId)
    const over = seal === 'closed' || seal === 'unsealed'
    if (over && !sealed.late) throw new NotebookFailure('tasting-over', seal)
    if (!over && sealed.late)
      throw new NotebookFailure('refused-record', 'a ballot is late once the tasting is over')
    if (sealed.change && sealed.replaces === undefined)
      throw new NotebookFailure('refused-record', 'a change names the ballot it changes')
    const before = standingBallots(whole.ballots, sealed)
    const asReplaced = before.some((each) => each.id === sealed.replaces)
    if (before.length > 0 ? !asReplaced : sealed.replaces !== undefined)
      throw new NotebookFailure('refused-record', 'a ballot replaces the standing one, by its id')
    await store.ballots.add(sealed)
    return { now: { ballots: [...whole.ballots, sealed] }, told: sealed }
  })
}
