import { idShape } from '@/core/record/id-and-stamp.ts'
import { type WholeTrial, wholeTrialShape } from '@/core/whole-trial/whole-trial.ts'
import { mapLeaves } from './map-leaves.ts'

/**
 * The same trial under new ids: every id in it, wherever it stands, is replaced by the same new one, devices included.
 * What lies outside keeps its id: the trial this one follows, and the ids in `keep`. Throws when `whole` does not fit its shape.
 */
export function copyWithNewIds(
  whole: WholeTrial,
  newId: () => string,
  keep: ReadonlySet<string> = new Set(),
): WholeTrial {
  const replaced = new Map<unknown, unknown>([...keep].map((id) => [id, id]))
  const followed = whole.trial.follows?.trialId
  if (followed !== undefined) replaced.set(followed, followed)
  const change = (id: unknown) => {
    const known = replaced.get(id) ?? newId()
    replaced.set(id, known)
    return known
  }
  return wholeTrialShape.parse(
    mapLeaves(wholeTrialShape, idShape, wholeTrialShape.parse(whole), change),
  )
}
