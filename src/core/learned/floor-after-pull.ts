import { stampsOf } from '@/core/session/bakes.ts'
import type { Standing } from '@/core/session/effective-events.ts'
import { type TemperatureReading, temperaturesOf } from '@/core/session/temperatures.ts'

/** What the oven's floor read after a pull that left it empty, until the next launch. */
export interface FloorAfterPull {
  /** Until it was as hot again: between two readings as if it rose evenly, else at most so; null where it was read colder alone. */
  hotAgainSeconds: number | null
  /** The last reading at which it was still colder; null where there is none. */
  colderAtSeconds: number | null
}

/** A reading no older than this tells what a launch went in at, and one no later what a pull left behind. Common practice, no source. */
const freshSeconds = 300
const longestSeconds = 3600

/**
 * After each pull that left the oven empty, how soon its floor read again what the first launch went in at, less `withinCelsius`.
 * Pulls after which nothing was read tell nothing; none does where the floor was not read before the first launch.
 */
export function floorsAfterPulls(
  events: readonly Standing[],
  withinCelsius: number,
): FloorAfterPull[] {
  const ins = stampsOf(events, 'bake-in')
  const outs = stampsOf(events, 'bake-out')
  const launches = [...ins.values()].toSorted((one, other) => one - other)
  const readings = temperaturesOf(events, 'oven-floor').toSorted((one, other) => one.at - other.at)
  const [firstLaunch] = launches
  const first = readings.findLast(
    ({ at }) =>
      firstLaunch !== undefined && at <= firstLaunch && at >= firstLaunch - freshSeconds * 1000,
  )
  if (!first) return []
  const hotCelsius = first.celsius - withinCelsius
  const insideAt = (at: number) =>
    [...ins].some(([id, inAt]) => {
      const outAt = outs.get(id) ?? inAt + longestSeconds * 1000
      return inAt < at && at < outAt
    })
  const pulls = [...new Set(outs.values())].filter((at) => !insideAt(at))
  return pulls.flatMap((pulledAt) => {
    const until = Math.min(
      launches.find((at) => at >= pulledAt) ?? Number.POSITIVE_INFINITY,
      pulledAt + longestSeconds * 1000,
    )
    const own = readings.filter(({ at }) => at > pulledAt && at <= until)
    return own.length === 0 ? [] : [afterPull(own, pulledAt, hotCelsius)]
  })
}

function afterPull(
  readings: readonly TemperatureReading[],
  pulledAt: number,
  hotCelsius: number,
): FloorAfterPull {
  const secondsOf = ({ at }: TemperatureReading) => (at - pulledAt) / 1000
  const index = readings.findIndex(({ celsius }) => celsius >= hotCelsius)
  const hot = readings[index]
  const colder = readings[(index < 0 ? readings.length : index) - 1]
  const colderAtSeconds = colder ? secondsOf(colder) : null
  if (!hot) return { hotAgainSeconds: null, colderAtSeconds }
  if (!colder) return { hotAgainSeconds: secondsOf(hot), colderAtSeconds }
  const share = (hotCelsius - colder.celsius) / (hot.celsius - colder.celsius)
  const between = secondsOf(colder) + share * (secondsOf(hot) - secondsOf(colder))
  return { hotAgainSeconds: between, colderAtSeconds }
}
