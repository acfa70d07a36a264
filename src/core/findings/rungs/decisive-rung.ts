import { type Absent, isPresent } from '@/core/findings/reason.ts'
import type { FittedRung } from './rung-of.ts'

const rungNames = ['pieces', 'doughs', 'factor'] as const
export type RungName = (typeof rungNames)[number]

/** The highest rung that answers for a response: the factor, else these doughs, else these pieces; null when none does. */
export function decisiveRung(found: Record<RungName, object>): RungName | null {
  return rungNames.findLast((name) => isPresent(found[name])) ?? null
}

/** The three rungs of one response with the fits behind them, or why each is not there. */
export type FittedRungs = Record<RungName, FittedRung | Absent>
