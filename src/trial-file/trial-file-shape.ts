import * as z from 'zod/mini'
import { noteShape } from '@/core/record/text.ts'
import { wholeTrialShape } from '@/core/whole-trial/whole-trial.ts'
import { dataVersion } from './data-version.ts'

/** The name by which a trial file is known. */
export const trialFormat = 'evenhand-trial'

const content = { note: z.exactOptional(noteShape), ...wholeTrialShape.shape }

/** One trial, whole, in one JSON document. `note` is for whoever opens the file; it is no part of the trial. */
export const trialFileShape = z.strictObject({
  format: z.literal(trialFormat),
  version: z.literal(dataVersion),
  ...content,
})

/** What a trial file holds once its format and version are known. */
export const trialContentShape = z.strictObject(content)
