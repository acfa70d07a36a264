/** Where a response begins to be worth anything, where it is perfect, and how the way between is bent (1 is straight). */
export type Desire =
  | { kind: 'higher'; worthless: number; perfect: number; bend: number }
  | { kind: 'lower'; perfect: number; worthless: number; bend: number }
  | { kind: 'target'; low: number; target: number; high: number; bend: number }

/**
 * How desirable one response is, from 0 to 1 (Derringer & Suich 1980, J Qual Technol 12:214): 0 at or past *worthless*, 1 at
 * or past *perfect*, between them the share of the way to the power `bend`. A target falls off on both sides.
 * Limits in the wrong order are a programmer's mistake and throw.
 *
 * @example desirability(5, { kind: 'higher', worthless: 1, perfect: 9, bend: 1 }) // 0.500 (half the way)
 */
export function desirability(value: number, desire: Desire): number {
  if (!(desire.bend > 0)) throw new RangeError('a bend must be positive')
  if (desire.kind === 'target') {
    const { low, target, high, bend } = desire
    return value <= target
      ? share(value, low, target) ** bend
      : share(-value, -high, -target) ** bend
  }
  const { worthless, perfect, bend, kind } = desire
  const sign = kind === 'higher' ? 1 : -1
  return share(sign * value, sign * worthless, sign * perfect) ** bend
}

/**
 * Overall desirability: the weighted geometric mean, so that a single 0 makes the whole 0. Weights are not negative and not
 * all zero; a response of weight 0 does not count.
 *
 * @example overallDesirability([{ value: 0.25, weight: 1 }, { value: 1, weight: 1 }]) // 0.500 (√(0.25·1))
 */
export function overallDesirability(parts: readonly { value: number; weight: number }[]): number {
  const total = parts.reduce((sum, { weight }) => sum + weight, 0)
  if (!(total > 0) || parts.some(({ weight }) => !(weight >= 0))) {
    throw new RangeError('weights must be zero or more, and one of them above zero')
  }
  const logs = parts
    .filter(({ weight }) => weight > 0)
    .map(({ value, weight }) => (weight / total) * Math.log(value))
  return Math.exp(logs.reduce((sum, value) => sum + value, 0))
}

function share(value: number, from: number, to: number): number {
  if (!(from < to)) throw new RangeError('the limits of a desirability must be in order')
  return Math.max(0, Math.min(1, (value - from) / (to - from)))
}
