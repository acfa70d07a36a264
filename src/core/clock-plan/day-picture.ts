import { stepTolerance } from '@/core/trial/step-tolerance.ts'
import type { DealtDay } from './dealt-day.ts'
import type { PlannedDay } from './planned-day.ts'
import type { DayAsked } from './problem-of-day.ts'

/** A stretch of time, in seconds of the day's clock. */
export interface Stretch {
  fromSeconds: number
  toSeconds: number
}

/** One bar: a dough, or a piece once the pieces of one dough run apart. */
export interface DoughBar {
  id: string
  batchId: string
  levelId: string | null
  /** From 1, in dough order. */
  dough: number
  hands: Stretch[]
  oven: Stretch[]
  /** Waits out of their tolerance. */
  off: (Stretch & { step: string })[]
  from: number
  to: number
}

/** A day as it is drawn: a bar for each dough, then the hands, then the oven load by load. */
export interface DayPicture {
  fromSeconds: number
  toSeconds: number
  bars: DoughBar[]
  hands: (Stretch & { id: string })[]
  loads: (Stretch & { number: number; batchIds: string[]; levelIds: string[] })[]
}

/** What stands where in the picture of a day; `first` is the second at which its first hand begins. */
export function dayPicture(
  { parts }: Pick<DayAsked, 'parts'>,
  planned: PlannedDay,
  day: DealtDay,
  first: number,
): DayPicture {
  const at = (id: string) => first + (planned.begins[id] ?? 0)
  const hands = parts
    .filter(({ activeSeconds }) => activeSeconds > 0)
    .map(({ id, activeSeconds }) => ({
      ...{ id, fromSeconds: at(id), toSeconds: at(id) + activeSeconds },
    }))
    .toSorted((one, other) => one.fromSeconds - other.fromSeconds)
  const pulls = parts.flatMap((part) => (part.what === 'pull' ? [part] : []))
  const levelOf = (unitId: string) => day.pieces.find(({ id }) => id === unitId)?.levelId ?? null
  const bars = day.dealt.doughOrder.flatMap((batchId, index): DoughBar[] => {
    const batch = day.batches.find(({ id }) => id === batchId)
    const own = parts.filter(
      (part) => part.batchId === batchId || (part.forAll && part.unitIds.includes(batchId)),
    )
    const lines =
      batch?.levelId === null
        ? [...new Set(own.flatMap((part) => part.unitIds.flatMap((id) => levelOf(id) ?? [])))]
        : [batch?.levelId ?? null]
    return lines.map((levelId): DoughBar => {
      const mine = own.filter(
        ({ unitIds }) =>
          batch?.levelId !== null ||
          unitIds.some((id) => levelOf(id) === null || levelOf(id) === levelId),
      )
      const ends = mine.map(({ id, activeSeconds }) => at(id) + activeSeconds)
      return {
        ...{ id: `${batchId} ${levelId ?? ''}`, batchId, levelId, dough: index + 1 },
        hands: mine
          .filter(({ activeSeconds }) => activeSeconds > 0)
          .map(({ id, activeSeconds }) => ({
            fromSeconds: at(id),
            toSeconds: at(id) + activeSeconds,
          })),
        oven: pulls
          .filter((pull) => mine.includes(pull))
          .map((pull) => ({
            fromSeconds: at(pull.launchId),
            toSeconds: at(pull.id) + pull.activeSeconds,
          })),
        off: mine.flatMap((part) =>
          part.after.flatMap((after) => {
            const before = mine.find(({ id }) => id === after.from)
            if (!before) return []
            const [fromSeconds, toSeconds] = [at(before.id) + before.activeSeconds, at(part.id)]
            const over = toSeconds - fromSeconds - after.seconds
            const { earlySeconds, lateSeconds } = stepTolerance(before.step)
            if (over >= -earlySeconds && over <= lateSeconds) return []
            return [{ fromSeconds, toSeconds, step: before.step.name }]
          }),
        ),
        from: Math.min(...mine.map(({ id }) => at(id))),
        to: Math.max(...ends),
      }
    })
  })
  const numbers = [...new Set(pulls.map(({ load }) => load))].toSorted((one, other) => one - other)
  return {
    ...{ fromSeconds: first, toSeconds: first + planned.spanSeconds, bars, hands },
    loads: numbers.map((load, number) => {
      const own = pulls.filter((pull) => pull.load === load)
      return {
        number: number + 1,
        batchIds: [...new Set(own.map(({ batchId }) => batchId))],
        levelIds: [
          ...new Set(
            own.flatMap(({ unitIds, batchId }) =>
              unitIds.flatMap(
                (id) =>
                  levelOf(id) ?? day.batches.find((each) => each.id === batchId)?.levelId ?? [],
              ),
            ),
          ),
        ],
        fromSeconds: Math.min(...own.map(({ launchId }) => at(launchId))),
        toSeconds: Math.max(...own.map(({ id, activeSeconds }) => at(id) + activeSeconds)),
      }
    }),
  }
}
