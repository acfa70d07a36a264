import type { Plan } from '@/core/trial/plan-record.ts'
import { stampsOf } from './bakes.ts'
import type { Standing } from './effective-events.ts'
import { notServed } from './failures.ts'
import { type ServingTurn, servingTurns } from './serving-turns.ts'
import type { Session } from './session-record.ts'

/** A code in its turn to the table, with when it is due there (UTC ms). */
export interface ServingDue extends ServingTurn {
  /** When its piece came out of the oven, and when it was put before the tasters; null before that. */
  outAt: number | null
  servedAt: number | null
  /** When it is due; null while its piece is not out of the oven, and where nothing says how long after. */
  dueAt: number | null
}

/**
 * The codes of a session served as baked, in their order, each due as many minutes out of the oven as those before it: as the
 * mean of those served so far; before the first, as long as the method's steps after the bake take. So the minutes from oven to
 * mouth stay equal (own rule).
 */
export function servingDues(
  session: Session,
  plan: Pick<Plan, 'steps' | 'serving'>,
  events: readonly Standing[],
): ServingDue[] {
  const out = stampsOf(events, 'bake-out')
  const served = new Map(
    events.flatMap((event) => (event.kind === 'served' ? [[event.about.id, event.at]] : [])),
  )
  const lost = [...notServed(session, events)]
  const turns = servingTurns(session, plan, events, lost).map((turn) => ({
    ...turn,
    outAt: out.get(turn.pieceId) ?? null,
    servedAt: served.get(turn.id) ?? null,
  }))
  const waits = turns.flatMap(({ outAt, servedAt }) =>
    outAt === null || servedAt === null || servedAt < outAt ? [] : [servedAt - outAt],
  )
  const wait =
    waits.length > 0
      ? waits.reduce((sum, each) => sum + each, 0) / waits.length
      : afterBakeSeconds(plan) * 1000
  return turns.map((turn) => ({
    ...turn,
    dueAt: turn.outAt === null ? null : Math.round(turn.outAt + wait),
  }))
}

/** What the steps after the last bake take by the plan; 0 without any. */
function afterBakeSeconds({ steps }: Pick<Plan, 'steps'>): number {
  const last = steps.findLastIndex(({ kind }) => kind === 'bake')
  return steps
    .slice(last + 1)
    .reduce((sum, step) => sum + step.repeats * (step.handsSeconds + step.waitSeconds), 0)
}
