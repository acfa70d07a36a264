import { levelVariances } from '@/core/design/level-variances.ts'
import type { Spread } from '@/core/design/spread.ts'
import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import { within95 } from '@/core/statistics/distributions/normal-within-95.ts'
import { unitOf } from '@/core/trial/doughs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import {
  type EffectThrough,
  effectRates,
  pointsOfFactor,
  pointsOfRipeness,
} from './effect-rates.ts'

/** What an item may do to the answer, in points of liking on nine points (0 to 8); `no-verdict` comes before any number. */
export type Effect =
  | { is: 'no-verdict' }
  /** It may move the levels against each other by so much. */
  | { is: 'moves'; points: number; through: EffectThrough | 'level' }
  /** Doughs of one level differ by so much by chance, 95 in 100. */
  | { is: 'chance'; points: number }
  /** A true difference of so much may stay unseen. */
  | { is: 'unseen'; points: number }

/** Percent of gas for each percent that levels of this kind lie apart (facts of the trade, from memory): wetter doughs +5 to 10 % from 60 to 80, 2 % of salt −10 to −20 %. */
const gasEach: Partial<Record<Plan['factor']['acts']['on'], number>> = {
  hydration: 0.3,
  salt: 0.15,
  yeast: 1,
  'preferment-share': 0.5,
}
const uncountedGas = 5
/** The scale has eight steps. */
const mostPoints = 8

/** The reckoned effect of an item of the fairness check on the answer; of a main response that is no liking it serves for ranking alone. */
export function effectOf(item: FairnessItem, plan: Plan, spread?: Spread): Effect {
  const rate = effectRates[item.code]
  const size = Math.abs(item.amount?.value ?? 1)
  const moves = (points: number, through: EffectThrough | 'level'): Effect => ({
    is: 'moves',
    points: Math.min(mostPoints, points),
    through,
  })
  switch (rate.by) {
    case 'size':
      return moves(rate.pointsEach * size, rate.through)
    case 'yes':
      return moves(rate.points, rate.through)
    case 'gap':
      return moves((size * pointsOfFactor) / Math.max(1, plan.levels.length - 1), 'level')
    case 'gassing': {
      if (item.severity === 'fine') return moves(0, 'ripeness')
      const each = gasEach[plan.factor.acts.on]
      const gas = each === undefined || !item.amount ? uncountedGas : each * size
      return moves(gas * pointsOfRipeness, 'ripeness')
    }
    case 'one-dough': {
      const { flights } = plan
      const tasters = Math.max(1, plan.tasters.length)
      const of = { tasters, flights, sessions: 1, unit: unitOf(plan), ...(spread && { spread }) }
      const sd = Math.sqrt(2 * levelVariances(of).theFactor)
      return { is: 'chance', points: Math.min(mostPoints, within95 * sd) }
    }
    case 'unseen':
      return { is: 'unseen', points: unseenBy(item, plan) }
    case 'no-verdict':
      return { is: 'no-verdict' }
  }
}

/** Of these pieces nothing need be seen where the factor itself is asked over sessions. */
function unseenBy(item: FairnessItem, plan: Plan): number {
  if (item.code !== 'few-sessions' && item.code !== 'few-tasters') return 0
  const { wouldShow, margin } = item.data
  if (wouldShow <= margin || (item.code === 'few-tasters' && plan.plannedSessions > 1)) return 0
  return Math.min(mostPoints, wouldShow)
}
