import { toFixedDecimals } from './fixed.ts'

/** A kitchen has few steps, and every weight of a sheet asks for one. */
const decimalsOfStep = new Map<number, number>()

/** Decimals a scale that reads in this step shows: 1 for 0.1, 2 for 0.05, 0 for 5. */
export function stepDecimals(step: number): number {
  const known = decimalsOfStep.get(step)
  if (known !== undefined) return known
  if (!(step > 0)) throw new Error(`a step must be above zero, not ${step}`)
  const [digits = '', exponent = '0'] = String(step).split('e')
  const decimals = Math.max(0, (digits.split('.')[1] ?? '').length - Number(exponent))
  decimalsOfStep.set(step, decimals)
  return decimals
}

/**
 * The multiple of a scale's step that is nearest to a value, halves away from zero, without float dust:
 * 66.44 on a 0.1 scale is 66.4, not 66.4000000001.
 */
export function roundToStep(value: number, step: number): number {
  const decimals = stepDecimals(step)
  const steps = Number(toFixedDecimals(Number((value / step).toPrecision(15)), 0))
  // Within a hair of what has so many decimals, so that no half is left to round; adding 0 makes -0 nothing.
  return Number((steps * step).toFixed(decimals)) + 0
}
