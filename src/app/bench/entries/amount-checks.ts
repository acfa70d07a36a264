import { temperatureEntry } from '@/app/kit/field/temperature-words.ts'
import type { EventOf } from '@/core/session/event-record.ts'

type TemperatureOf = EventOf<'temperature'>['of']

interface Ends {
  leastCelsius: number
  mostCelsius: number
}

/** Flour comes from a freezer at the coldest, and no dough that is to rise is as hot as 70 °C: a lost decimal sign shows. */
const cold = { leastCelsius: -40, mostCelsius: 70 }

const ends: Partial<Record<TemperatureOf, Ends>> = {
  dough: { leastCelsius: -10, mostCelsius: 70 },
  preferment: { leastCelsius: -10, mostCelsius: 70 },
  flour: cold,
  fridge: cold,
  room: cold,
  water: { leastCelsius: 0, mostCelsius: 100 },
}

/** The ends between which a temperature can be logged, by what was measured; the oven's and the loaf's are wide. */
export function loggedEnds(of: TemperatureOf): Ends {
  return ends[of] ?? { leastCelsius: -80, mostCelsius: 700 }
}

/** What keeps a temperature of one kind from being logged, in words that name the mend. */
export function celsiusCheck(of: TemperatureOf): (celsius: number) => string | undefined {
  return temperatureEntry('celsius', loggedEnds(of)).check
}

/** What keeps a typed number from being logged, in words that name the mend; undefined when it can stand. */
export const amountCheck = {
  grams: (grams: number) =>
    grams < 0 || grams > 1_000_000 ? 'Give a mass from 0 g to 1 000 000 g.' : undefined,
  rise: (percent: number) =>
    percent < -100 || percent > 2000 ? 'Give a rise from −100 % to 2000 %.' : undefined,
  size: (value: number) =>
    value < 0 || value > 1_000_000 ? 'Give a size from 0 to 1 000 000.' : undefined,
  any: (_value: number) => undefined,
}
