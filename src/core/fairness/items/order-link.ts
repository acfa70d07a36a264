import type { OrderData } from '@/core/fairness/fairness-data.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { meanOf } from './ends-of.ts'

/** One stand of a level in an order: which level (by its place in the plan) and the position, load or place it had. */
export interface Stand {
  level: number
  position: number
}

export interface OrderLink {
  /** 0: the order tells nothing of the level. 1: it tells all. */
  size: number
  against: OrderData['against']
}

/**
 * How far an order goes with the levels: the larger of |r| with L and |r| with (L − mean)², since a drift over the day looks
 * like a slope and a best middle like a bend. For a choice, which has no order, the root of the share of the positions' spread
 * that lies between the options. Null when nothing varies.
 */
export function orderLink(levels: Plan['levels'], stands: readonly Stand[]): OrderLink | null {
  const positions = stands.map(({ position }) => position)
  if (new Set(positions).size < 2) return null
  const values = levels.map(({ value }) => value)
  if (values.some((value) => value === null)) {
    return { size: sharedSpread(stands), against: 'option' }
  }
  const known = values.map((value) => value ?? 0)
  const middle = meanOf(known)
  const by = (of: (value: number) => number) =>
    Math.abs(
      correlation(
        stands.map(({ level }) => of(known[level] ?? middle)),
        positions,
      ),
    )
  const level = by((value) => value)
  const bend = by((value) => (value - middle) ** 2)
  return bend > level + 1e-9 ? { size: bend, against: 'middle' } : { size: level, against: 'level' }
}

/** Pearson's r; 0 where one side does not vary. */
function correlation(xs: readonly number[], ys: readonly number[]): number {
  const [meanX, meanY] = [meanOf(xs), meanOf(ys)]
  const sum = (of: (x: number, y: number) => number) =>
    xs.reduce((total, x, index) => total + of(x - meanX, (ys[index] ?? meanY) - meanY), 0)
  const across = Math.sqrt(sum((x) => x * x) * sum((_, y) => y * y))
  return across < 1e-12 ? 0 : sum((x, y) => x * y) / across
}

function sharedSpread(stands: readonly Stand[]): number {
  const mean = meanOf(stands.map(({ position }) => position))
  const all = stands.reduce((sum, { position }) => sum + (position - mean) ** 2, 0)
  const between = [...new Set(stands.map(({ level }) => level))].reduce((sum, level) => {
    const own = stands.filter((stand) => stand.level === level)
    return sum + own.length * (meanOf(own.map(({ position }) => position)) - mean) ** 2
  }, 0)
  return all === 0 ? 0 : Math.sqrt(between / all)
}
