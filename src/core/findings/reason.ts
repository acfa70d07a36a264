import * as z from 'zod/mini'
import type { StatisticsReason } from '@/core/statistics/reason.ts'

/** Reasons that come up from the computations themselves; what each means stands with `StatisticsReason`. */
const statisticsReasons = [
  'no-rows',
  'one-level',
  'one-block',
  'level-without-rows',
  'levels-not-connected',
  'no-residual-df',
  'no-residual-variance',
  'all-equal',
  'level-values-equal',
  'needs-three-levels',
  'covariate-not-separable',
  'no-lack-of-fit-df',
  'no-curvature',
  'no-slope',
  'no-complete-block',
  'too-few-clusters',
  'no-resample-had-a-best',
  'group-empty',
  'group-not-separable',
  'constant-values',
  'too-few-values',
  'never-reached',
] as const satisfies readonly StatisticsReason[]

/**
 * Reasons that come from the trial.
 *
 * - `still-sealed`: codes are not opened yet. `no-scores`: the response has no value at all.
 * - `needs-two-tasters`, `needs-two-sessions`, `needs-two-blocks`: a rung has too little to stand on. `one-flight`, `several-sessions`: the doughs rung answers within one session of two or more flights alone.
 * - `tasters-not-shared`: tasters and units fall into groups that cut a block, so batches cannot be compared fairly.
 * - `choice-factor`: options without order have no slope, trend or best. `no-control`: no level is marked as the control, or it has no score.
 * - `no-minutes`, `no-positions`: nothing was recorded. `not-logged`: no as-handled level is known.
 * - `not-significant`: said only after a significant test. `group-too-small`: under a fifth of the answers, 5 servings or 4 tasters.
 * - `no-margin`, `no-direction`: no margin was named, or the response has no better side. `margin-too-fine`: with this spread nothing could pass.
 * - `no-target`: the response has no target value. `never-crosses`: the curve does not reach the target. `tied`: more than one level stands first. `not-asked`: left out on request.
 * - `no-parts`: no response has a better side to weigh. `too-few-to-tell`: freshness or order would be known to points only.
 */
const trialReasons = [
  'still-sealed',
  'no-scores',
  'needs-two-tasters',
  'needs-two-sessions',
  'needs-two-blocks',
  'one-flight',
  'several-sessions',
  'tasters-not-shared',
  'choice-factor',
  'no-control',
  'no-minutes',
  'no-positions',
  'not-logged',
  'not-significant',
  'group-too-small',
  'no-margin',
  'no-direction',
  'margin-too-fine',
  'no-target',
  'never-crosses',
  'tied',
  'not-asked',
  'no-parts',
  'too-few-to-tell',
] as const

export const findingsReasons = [...statisticsReasons, ...trialReasons] as const
export type FindingsReason = (typeof findingsReasons)[number]

/** An answer that is not there: why, and where it helps, how many tasters, sessions or flights would answer. */
export const absentShape = z.strictObject({
  reason: z.enum(findingsReasons),
  tasters: z.exactOptional(z.number()),
  sessions: z.exactOptional(z.number()),
  flights: z.exactOptional(z.number()),
})
export type Absent = z.infer<typeof absentShape>

/** A shape or, in its place, the reason why there is none. */
export const orAbsent = <Shape extends z.core.$ZodType>(shape: Shape) =>
  z.union([shape, absentShape])

/** True when an answer is there: narrows away the reason. */
export function isPresent<Answer>(answer: Answer | Absent): answer is Exclude<Answer, Absent> {
  return typeof answer !== 'object' || answer === null || !('reason' in answer)
}

/** The absent answer for a reason that a computation or the trial gave. */
export function absent(reason: FindingsReason | StatisticsReason): Absent {
  return { reason }
}
