import { sealed } from '@/core/seal/sealed.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'

/**
 * What a trial file is called: its question, in letters every file system takes. While a tasting may still be blind the
 * name tells nothing but the day the trial was made: a question may hold a level.
 */
export function trialFileName(whole: WholeTrial): string {
  const day = new Date(whole.trial.createdAt).toISOString().slice(0, 10)
  const words = planInForce(whole)
    .question.normalize('NFKD')
    .toLowerCase()
    .replace(/\p{Mark}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 60)
    .replace(/^-+|-+$/g, '')
  const told = !sealed(whole) && words !== ''
  return `${told ? words : `trial-${day}`}.evenhand.json`
}

/** A trial as its file: name and text. */
export function exportTrial(whole: WholeTrial): { name: string; text: string } {
  return { name: trialFileName(whole), text: writeTrialFile(whole) }
}
