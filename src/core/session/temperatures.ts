import type { Standing } from './effective-events.ts'
import type { About, EventOf } from './event-record.ts'

export interface TemperatureReading {
  of: EventOf<'temperature'>['of']
  about: About
  celsius: number
  at: number
}

/** The temperatures logged, in log order; of one kind, and of one dough, piece or session, when asked. */
export function temperaturesOf(
  effective: readonly Standing[],
  of?: TemperatureReading['of'],
  aboutId?: string,
): TemperatureReading[] {
  return effective.flatMap((event) =>
    event.kind === 'temperature' &&
    (of === undefined || event.of === of) &&
    (aboutId === undefined || event.about.id === aboutId)
      ? { of: event.of, about: event.about, celsius: event.celsius, at: event.at }
      : [],
  )
}
