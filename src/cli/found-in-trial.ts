import { trialFindings } from '@/core/findings/trial-findings.ts'
import { refuseTableOptions } from './csv-options.ts'
import type { Found } from './found-shape.ts'
import { stillSealed, trialInText } from './read-trial.ts'
import type { Asked } from './verb.ts'

/** The findings of a trial file. Throws `CommandTrouble` when the file is broken or its tasting sealed. */
export function foundInTrial(asked: Asked, text: string, resamples: number | null): Found {
  refuseTableOptions(asked)
  const whole = trialInText(asked.file, text)
  const answer = trialFindings(whole, { unsealed: asked.flag('unseal'), resamples })
  if (!answer.ok) throw stillSealed(asked.file)
  return { scores: answer.scores, findings: answer.document, whole }
}
