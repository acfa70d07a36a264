import type { Absent } from '@/core/findings/reason.ts'
import type { RungName } from './decisive-rung.ts'
import type { FittedRung } from './rung-of.ts'

/** The three rungs of one response with the fits behind them, or why each is not there. */
export type FittedRungs = Record<RungName, FittedRung | Absent>
