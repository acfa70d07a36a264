import { withOwnMark } from '@/core/units/number-text.ts'

/**
 * A tick's number with as many decimals as the step between neighbouring ticks needs, so that all labels of one axis
 * are written alike; a true minus sign.
 */
export function tickLabel(value: number, marks: readonly number[]): string {
  const [first, second] = marks
  const step = first === undefined || second === undefined ? 1 : Math.abs(second - first)
  const decimals = Math.min(10, Math.max(0, -Math.floor(Math.log10(step) + 1e-9)))
  const text = Math.abs(value).toFixed(decimals)
  return withOwnMark(value < 0 && Number(text) !== 0 ? `−${text}` : text)
}
