import { tickStep } from 'd3-array'
import { decimalsOf } from '@/core/units/number-text.ts'

interface Valued {
  value: number | null
}

/** How far one press of a key moves a level, in its own unit: a round step, about a fiftieth of what the levels span, and never finer than they were typed. */
function stepOf(levels: readonly Valued[]): number {
  const values = levels.flatMap(({ value }) => (value === null ? [] : [value]))
  const least = Math.min(...values)
  const most = Math.max(...values)
  const span = most - least || Math.max(Math.abs(most) * 0.2, 1)
  const typed = 10 ** -Math.max(0, ...values.map(decimalsOf))
  return Math.max(tickStep(0, span, 50), typed)
}

/** A value at the nearest whole step of these levels. */
export function roundedToStep(value: number, levels: readonly Valued[]): number {
  const step = stepOf(levels)
  return Number((Math.round(value / step) * step).toPrecision(12))
}

/** A level's value moved by so many steps, up or down. */
export function steppedValue(value: number, steps: number, levels: readonly Valued[]): number {
  return Number((value + steps * stepOf(levels)).toPrecision(12))
}
