import type { OvenTimes } from '@/core/kitchen/oven-times.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { asSentenceStart, listText } from '@/core/wording/words/list-text.ts'

/** An oven's own times in a sentence: "Hot again 2 min 30 s after a load, 9 s for 1 °C hotter and 20 s for 1 °C cooler." */
export function ovenTimesText({ recoverySeconds, oven }: OvenTimes): string {
  const said = [
    ...(recoverySeconds === undefined
      ? []
      : [`hot again ${durationText(recoverySeconds)} after a load`]),
    ...(oven
      ? [
          `${durationText(oven.heatSecondsPerKelvin)} for 1 °C hotter`,
          `${durationText(oven.coolSecondsPerKelvin)} for 1 °C cooler`,
        ]
      : []),
  ]
  return said.length > 0 ? `${asSentenceStart(listText(said))}.` : 'Nothing: times are as usual.'
}
