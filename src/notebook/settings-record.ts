import * as z from 'zod/mini'
import { idShape } from '@/core/record/id-and-stamp.ts'

/** This device's settings, one record. `device` is made once and names the device in every event. */
export const settingsShape = z.strictObject({
  key: z.literal('settings'),
  device: idShape,
  appearance: z.enum(['system', 'light', 'dark']),
  temperatureUnit: z.enum(['celsius', 'fahrenheit']),
  /** How figures are shown and typed beside temperatures; grams, 24 hours and the point where nothing was chosen. */
  figures: z.exactOptional(
    z.strictObject({
      mass: z.enum(['gram', 'ounce']),
      hours: z.enum(['24', '12']),
      decimal: z.enum(['point', 'comma']),
    }),
  ),
  cautionsSeen: z.array(z.enum(['oven', 'tasting'])),
  /** The trials whose answer is covered on this device: a lesson on them is under way. */
  lessons: z.exactOptional(z.array(idShape)),
  /** By the sample's name: the trial it was opened as. */
  openedSamples: z.exactOptional(z.record(z.string(), idShape)),
})
export type Settings = z.infer<typeof settingsShape>
