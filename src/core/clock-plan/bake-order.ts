import { piecesAsked } from '@/core/trial/pieces-asked.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Step } from '@/core/trial/step.ts'
import { heatsDiffer } from './oven-heat.ts'

type Timed = Pick<
  Plan,
  | 'steps'
  | 'levels'
  | 'flights'
  | 'sparePieces'
  | 'warmUpPiece'
  | 'doughs'
  | 'factor'
  | 'placesPerLoad'
>

/** A wait longer than this many staggers makes the doughs' ages at baking equal enough for a bake order of its own. */
const mostStaggers = 10

/** What a step keeps the hands with one dough and no other; nothing where it is done once for all. */
function handsOfOne(step: Step, perBatch: number): number {
  if (step.per === 'piece') return step.handsSeconds * perBatch
  return step.once === true ? 0 : step.handsSeconds
}

/**
 * Seconds from one dough to the next: the longest that a single step keeps the hands or the mixer busy with one dough, or the
 * oven with one piece's share of a load. Levels that want the oven at different temperatures share no load, so that one piece
 * has the oven whole.
 */
export function staggerSeconds(plan: Timed): number {
  const { perBatch } = piecesAsked(plan)
  const sharing = heatsDiffer(plan) ? 1 : plan.placesPerLoad
  return Math.max(
    0,
    ...plan.steps.map((step) =>
      step.uses.includes('oven')
        ? (step.handsSeconds + step.waitSeconds) / sharing
        : handsOfOne(step, perBatch),
    ),
  )
}

/** The longest that a single step keeps the hands with one dough, in seconds; the oven's own time is its turn, not theirs. */
export function handsOnDoughSeconds(plan: Timed): number {
  const { perBatch } = piecesAsked(plan)
  return Math.max(0, ...plan.steps.map((step) => handsOfOne(step, perBatch)))
}

/**
 * True when the pieces are baked in the order their doughs were mixed, so that all are equally old; false when the wait from
 * the first mix to the oven is longer than ten staggers, where a bake order of its own costs little and frees the order.
 */
export function bakesInDoughOrder(plan: Timed): boolean {
  const mix = plan.steps.findIndex((step) => step.kind === 'mix')
  const bake = plan.steps.findIndex((step) => step.kind === 'bake')
  const between = plan.steps.slice(Math.max(0, mix), bake < 0 ? plan.steps.length : bake)
  const waited = between.reduce(
    (total, step) => total + (step.handsSeconds + step.waitSeconds) * step.repeats,
    0,
  )
  return waited <= mostStaggers * staggerSeconds(plan)
}
