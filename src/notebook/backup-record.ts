import * as z from 'zod/mini'
import { settingsShape } from './settings-record.ts'

/** What a backup says of itself, in `backup.json`. */
export const backupShape = z.strictObject({
  format: z.literal('evenhand-backup'),
  version: z.number().check(z.int(), z.gte(1)),
})

/** The settings that travel in a backup: all but the device, which names this notebook alone. */
export const backedUpSettingsShape = z.strictObject({
  appearance: settingsShape.shape.appearance,
  temperatureUnit: settingsShape.shape.temperatureUnit,
  figures: settingsShape.shape.figures,
  cautionsSeen: settingsShape.shape.cautionsSeen,
})
