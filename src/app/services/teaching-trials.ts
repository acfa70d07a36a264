import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { Notebook } from '@/notebook/notebook.ts'

/** Every trial that can teach something of the kitchen: begun, not keeping its codes, not in the bin; archived ones too. */
export async function teachingTrials(
  notebook: Pick<Notebook, 'summaries' | 'wholeTrial'>,
): Promise<WholeTrial[]> {
  const summaries = await notebook.summaries({ archived: true })
  const trials: WholeTrial[] = []
  for (const { trialId, stage, sealed } of summaries) {
    if (stage === 'planning' || sealed) continue
    const whole = await notebook.wholeTrial(trialId)
    if (whole) trials.push(whole)
  }
  return trials
}
