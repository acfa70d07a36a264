import type { Plan } from '@/core/trial/plan-record.ts'
import type { Response } from '@/core/trial/response.ts'
import { bakes } from './bakes.ts'
import type { Standing } from './effective-events.ts'
import { notServed } from './failures.ts'
import { doughsInWork, type Unit } from './line.ts'
import { measureValues } from './measure-values.ts'
import type { Session } from './session-record.ts'

/** What a day's log still lacks when nothing is left to do. */
export interface DayMissing {
  /** Counted and warm-up pieces that the log has not in the oven, and that nobody left out. */
  neverBaked: string[]
  /** The baker's own answers and measures that are not there, with the doughs or pieces they lack. */
  answers: { response: Response; units: Unit[] }[]
}

/**
 * What is still missing of a session's day: pieces never baked (where the method bakes at all), and what the plan asks the baker of
 * each dough or piece, a value that the notebook works out itself among them. What failed and was left out is not missing.
 */
export function dayMissing(
  session: Session,
  plan: Plan,
  effective: readonly Standing[],
): DayMissing {
  const lost = notServed(session, effective)
  const inWork = new Set(doughsInWork(session).map(({ id }) => id))
  const pieces = session.pieces.filter(
    ({ id, role, batchId }) => role !== 'spare' && inWork.has(batchId) && !lost.has(id),
  )
  const baked = new Map(bakes(session, effective).map((bake) => [bake.pieceId, bake.inAt]))
  const bakesAtAll = plan.steps.some(({ kind }) => kind === 'bake')
  return {
    neverBaked: bakesAtAll
      ? pieces.flatMap(({ id }) => ((baked.get(id) ?? null) === null ? [id] : []))
      : [],
    answers: plan.responses.flatMap((response) => {
      if (response.by !== 'baker' || response.about === 'serving') return []
      const asked = response.about === 'batch' ? batchUnits(inWork) : pieceUnits(pieces)
      const known = new Set(
        measureValues(session, plan, effective, response).map(({ unit }) => unit.id),
      )
      const units = asked.filter(({ id }) => !known.has(id))
      return units.length > 0 ? [{ response, units }] : []
    }),
  }
}

const batchUnits = (ids: ReadonlySet<string>): Unit[] =>
  [...ids].map((id) => ({ kind: 'batch', id }))

const pieceUnits = (pieces: readonly { id: string; role: string }[]): Unit[] =>
  pieces.flatMap(({ id, role }): Unit[] => (role === 'counted' ? [{ kind: 'piece', id }] : []))

/** Whether the baker was told what is missing and leaves it so. */
export const dayClosed = (effective: readonly Standing[]): boolean =>
  effective.some(({ kind }) => kind === 'day-closed')

export const isNothingMissing = ({ neverBaked, answers }: DayMissing): boolean =>
  neverBaked.length === 0 && answers.length === 0
