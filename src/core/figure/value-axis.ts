import { extent, ticks as roundTicks } from 'd3-array'
import type { AnswerScale } from '@/core/trial/response.ts'
import { tickLabel } from './tick-label.ts'

export interface ValueAxis {
  low: number
  high: number
  ticks: { value: number; label: string }[]
}

/**
 * The upright axis of a response: the whole scale for scores (1 to 9 and 1 to 5, so that a small difference looks
 * small), round ticks around the data for a measured number. Data of one value only get room around it.
 */
export function valueAxis(scale: AnswerScale, values: readonly number[]): ValueAxis {
  if (scale.kind === 'nine-point') return marked(1, 9, [1, 3, 5, 7, 9])
  if (scale.kind === 'just-about-right') return marked(1, 5, [1, 2, 3, 4, 5])
  return freeAxis(values)
}

/** Round ticks that enclose all the numbers, about five of them; 0 to 1 when there are none. */
export function freeAxis(values: readonly number[], wanted = 5): ValueAxis {
  const [least = 0, most = 1] = extent(values)
  const room = most > least ? (most - least) * 0.06 : Math.max(Math.abs(most) * 0.1, 0.5)
  const inner = roundTicks(least - room, most + room, wanted)
  const step = inner.length > 1 ? (inner[1] ?? 1) - (inner[0] ?? 0) : 1
  const low = Math.floor((least - room) / step + 1e-9) * step
  const high = Math.ceil((most + room) / step - 1e-9) * step
  return marked(low, high, roundTicks(low, high, Math.round((high - low) / step)))
}

function marked(low: number, high: number, values: readonly number[]): ValueAxis {
  return { low, high, ticks: values.map((value) => ({ value, label: tickLabel(value, values) })) }
}
