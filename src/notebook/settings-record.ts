import * as z from 'zod/mini'
import { idShape } from '@/core/record/id-and-stamp.ts'

/** This device's settings, one record. `device` is made once and names the device in every event. */
export const settingsShape = z.strictObject({
  key: z.literal('settings'),
  device: idShape,
  appearance: z.enum(['system', 'light', 'dark']),
  temperatureUnit: z.enum(['celsius', 'fahrenheit']),
  cautionsSeen: z.array(z.enum(['oven', 'tasting'])),
  /** By the sample's name: the trial it was opened as. */
  openedSamples: z.exactOptional(z.record(z.string(), idShape)),
})
export type Settings = z.infer<typeof settingsShape>
