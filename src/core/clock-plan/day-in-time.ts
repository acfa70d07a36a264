import type { Plan } from '@/core/trial/plan-record.ts'
import { type CalendarDay, quietBlocks } from './quiet-hours.ts'
import type { Block, DayProblem, Window } from './search/day-problem.ts'

/** The calendar and the clock on the wall of the plan's zone. */
export interface WallClock {
  dayOf: (at: number) => CalendarDay
  /** UTC ms of a time of day, in minutes from its midnight. */
  momentOf: (day: CalendarDay, minutes: number) => number
}

/** Where a day may lie; `originAt` (UTC ms) is second 0, null where no moment is fixed. */
export interface DayInTime {
  originAt: number | null
  window: Window
  blocks: Block[]
}

const daySeconds = 86_400

/**
 * What the plan wishes of its day, in elapsed seconds from one origin: the fixed moment, the nights without hands, the hours
 * in which a helper is not there. A day that takes `spanSeconds` by a first plan may begin so long before people eat, and half
 * again. Nights are taken by the wall clock, so that one in which summer time begins or ends is as long as it really is.
 */
export function dayInTime(
  { day, pairsOfHands }: Pick<Plan, 'day' | 'pairsOfHands'>,
  spanSeconds: number,
  clock: WallClock,
): DayInTime {
  const helpers = day?.helpers ?? []
  const from = { startSeconds: 0, startFixed: true }
  if (!day?.fixed) return { originAt: null, window: from, blocks: [] }
  const { what, at } = day.fixed
  const reach = Math.ceil((spanSeconds * 1.5) / daySeconds + 1)
  const originAt = what === 'start' ? at : at - reach * daySeconds * 1000
  const endSeconds = reach * daySeconds
  const blocks: Block[] = day.quiet
    ? quietBlocks(day.quiet, clock.dayOf(originAt), reach + 2, {
        ...{ originAt, hands: pairsOfHands + helpers.length, momentOf: clock.momentOf },
      })
    : []
  return {
    originAt,
    window: what === 'start' ? from : { startSeconds: 0, endSeconds, endFixed: true },
    blocks: [
      ...blocks,
      ...helpers.flatMap((helper) => awayBlocks(helper, originAt, reach + 3, blocks)),
    ],
  }
}

/** The day's problem laid where it may lie. */
export function laidInTime(problem: DayProblem, { window, blocks }: DayInTime): DayProblem {
  return { ...problem, window, blocks }
}

/** All hours but a helper's own, less the nights, in which nobody works anyway. */
function awayBlocks(
  { fromAt, untilAt }: { fromAt: number; untilAt: number },
  originAt: number,
  days: number,
  nights: readonly Block[],
): Block[] {
  const seconds = (at: number) => Math.round((at - originAt) / 1000)
  const [start, end] = [-daySeconds, (days + 1) * daySeconds]
  const away = [
    [start, Math.max(start, seconds(fromAt))],
    [Math.min(end, seconds(untilAt)), end],
  ] as const
  return away
    .flatMap(([from, to]) => without(from, to, nights))
    .map(([fromSeconds, toSeconds]) => ({
      ...{ resource: 'hands', count: 1 },
      fromSeconds,
      toSeconds,
    }))
}

function without(
  from: number,
  to: number,
  nights: readonly Block[],
): (readonly [number, number])[] {
  let rest: (readonly [number, number])[] = from < to ? [[from, to]] : []
  for (const night of nights)
    rest = rest.flatMap(([a, b]): (readonly [number, number])[] =>
      night.toSeconds <= a || night.fromSeconds >= b
        ? [[a, b]]
        : [
            ...(a < night.fromSeconds ? [[a, night.fromSeconds] as const] : []),
            ...(night.toSeconds < b ? [[night.toSeconds, b] as const] : []),
          ],
    )
  return rest
}
