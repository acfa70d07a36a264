import type { QuietHours } from '@/core/trial/day-wishes.ts'
import type { Block } from './search/day-problem.ts'

/** A calendar day; `day` may run past the end of its month. */
export interface CalendarDay {
  year: number
  month: number
  day: number
}

/**
 * The hours without hands as blocks, in elapsed seconds from `originAt` (UTC ms): one a night from the day before the origin on.
 * `momentOf` turns a wall-clock time of a day into UTC ms by the plan's zone, so that a night in which summer time begins or
 * ends is as long as it really is. Hours that end when they begin are none.
 */
export function quietBlocks(
  { fromMinutes, toMinutes }: QuietHours,
  first: CalendarDay,
  days: number,
  {
    originAt,
    hands,
    momentOf,
  }: {
    originAt: number
    hands: number
    momentOf: (day: CalendarDay, minutes: number) => number
  },
): Block[] {
  if (fromMinutes === toMinutes) return []
  return Array.from({ length: days + 1 }, (_, at): Block => {
    const evening = { ...first, day: first.day - 1 + at }
    const morning = toMinutes > fromMinutes ? evening : { ...evening, day: evening.day + 1 }
    const seconds = (day: CalendarDay, minutes: number) =>
      Math.round((momentOf(day, minutes) - originAt) / 1000)
    return {
      ...{ resource: 'hands', count: hands },
      fromSeconds: seconds(evening, fromMinutes),
      toSeconds: seconds(morning, toMinutes),
    }
  })
}
