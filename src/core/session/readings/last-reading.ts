import type { Standing } from '@/core/session/effective-events.ts'
import type { TemperatureOf } from '@/core/session/press/usual-readings.ts'

/** A reading that was taken before, with its moment (UTC ms). */
export interface LastReading {
  value: number
  at: number
}

/** Of the room, the fridge and the oven's floor there is one, whatever dough it was read beside. */
export const isOfKitchen = (of: TemperatureOf): boolean =>
  of === 'room' || of === 'fridge' || of === 'oven-floor'

/** The last temperature of one kind that stands beside a pad: of this dough or piece, or of the kitchen; null where there is none. */
export function lastCelsius(
  events: readonly Standing[],
  of: TemperatureOf,
  unitId: string,
): LastReading | null {
  const last = events.findLast(
    (event) =>
      event.kind === 'temperature' &&
      event.of === of &&
      (isOfKitchen(of) || event.about.id === unitId),
  )
  return last?.kind === 'temperature' ? { value: last.celsius, at: last.at } : null
}

/** The last rise of a dough or piece in its marked tub (percent over the volume after mixing); null where there is none. */
export function lastRise(events: readonly Standing[], unitId: string): LastReading | null {
  const last = events.findLast(({ kind, about }) => kind === 'rise' && about.id === unitId)
  return last?.kind === 'rise' ? { value: last.percent, at: last.at } : null
}
