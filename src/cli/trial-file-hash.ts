import { createHash } from 'node:crypto'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'

/** SHA-256 of a trial's file as this version writes it, in hex. */
export function trialFileHash(whole: WholeTrial): string {
  return createHash('sha256').update(writeTrialFile(whole)).digest('hex')
}
