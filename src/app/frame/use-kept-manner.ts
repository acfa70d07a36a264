import { type Manner, manner, writeAs } from '@/core/units/manner.ts'
import type { Settings } from '@/notebook/settings-record.ts'

/** The manner that a device's settings say. */
export function mannerOf({ temperatureUnit, figures }: Settings): Manner {
  const { mass = 'gram', hours = '24', decimal = 'point' } = figures ?? {}
  return { mass, temperature: temperatureUnit, hours, decimal }
}

/** The manner of the settings, in use before anything below is drawn; what is in use already, where they say the same. */
export function useKeptManner(settings: Settings | undefined): Manner {
  if (!settings) return manner()
  const said = mannerOf(settings)
  const same = Object.entries(said).every(([key, value]) => manner()[key as keyof Manner] === value)
  if (!same) writeAs(said)
  return manner()
}
