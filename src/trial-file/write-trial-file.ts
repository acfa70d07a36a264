import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { canonicalTrial } from './canonical-trial.ts'
import { dataVersion } from './data-version.ts'
import { trialFileShape, trialFormat } from './trial-file-shape.ts'

/**
 * A trial as the text of a trial file: canonical, so that the same trial gives the same bytes; two-space indentation,
 * a newline at the end. `note` tells whoever opens the file something about it. Throws when the trial does not fit its shape.
 */
export function writeTrialFile(whole: WholeTrial, note = ''): string {
  const file = trialFileShape.parse({
    format: trialFormat,
    version: dataVersion,
    ...(note === '' ? {} : { note }),
    ...canonicalTrial(whole),
  })
  return `${JSON.stringify(file, null, 2)}\n`
}
