import type { KitchenThing } from './kitchen-record.ts'
import { thingsOfKind } from './things-of-kind.ts'

/**
 * How long an oven takes to be 1 K hotter, and 1 K cooler, in seconds, where nothing is known of it: 10 K a minute with its
 * heat on, 3 K a minute standing off with its door closed. A stated default; common practice, no source: for a new set point the
 * air takes 10 to 20 minutes, a baking stone 20 to 40 up and 30 to 60 down, so stone and steel want longer than this.
 */
export const usualOvenPace = { heatSecondsPerKelvin: 6, coolSecondsPerKelvin: 20 }

export type OvenPace = typeof usualOvenPace

/** An oven's own time as it is known: until it is as hot again after a load, and 1 K hotter or cooler; seconds. */
export interface OvenTimes {
  recoverySeconds?: number
  oven?: OvenPace
}

/**
 * What the kitchen says of the time of some ovens, named by `ids`; of several the slowest. Left out is what no oven says; where
 * it says one way of the pace alone, the other is as usual.
 */
export function ovenTimes(kitchen: readonly KitchenThing[], ids: readonly string[]): OvenTimes {
  const ovens = thingsOfKind(kitchen, 'oven', ids)
  const slowest = (of: readonly (number | undefined)[]): number | null => {
    const said = of.filter((seconds) => seconds !== undefined)
    return said.length > 0 ? Math.max(...said) : null
  }
  const recovery = slowest(ovens.map(({ recoverySeconds }) => recoverySeconds))
  const heat = slowest(ovens.map(({ heatSecondsPerKelvin }) => heatSecondsPerKelvin))
  const cool = slowest(ovens.map(({ coolSecondsPerKelvin }) => coolSecondsPerKelvin))
  return {
    ...(recovery === null ? {} : { recoverySeconds: recovery }),
    ...(heat === null && cool === null
      ? {}
      : {
          oven: {
            heatSecondsPerKelvin: heat ?? usualOvenPace.heatSecondsPerKelvin,
            coolSecondsPerKelvin: cool ?? usualOvenPace.coolSecondsPerKelvin,
          },
        }),
  }
}
