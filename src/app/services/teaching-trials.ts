import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { Notebook } from '@/notebook/notebook.ts'

/** A kitchen and its tasters change: what was made longest ago teaches little of them, and reading it would take minutes. */
const mostTeaching = 100

/** The newest trials that can teach something of the kitchen: begun, not keeping their codes, not in the bin; archived ones too. */
export async function teachingTrials(
  notebook: Pick<Notebook, 'newestBegun' | 'wholeTrial'>,
): Promise<WholeTrial[]> {
  const trials: WholeTrial[] = []
  for (const trialId of await notebook.newestBegun(mostTeaching)) {
    const whole = await notebook.wholeTrial(trialId)
    if (whole) trials.push(whole)
  }
  return trials
}
