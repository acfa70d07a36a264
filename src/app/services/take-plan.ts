import { sealed } from '@/core/seal/sealed.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { Notebook } from '@/notebook/notebook.ts'
import { logLook } from './log-look.ts'

/** The plan in force of a trial, taken for another; of a sealed one the look is written into its log first. Undefined where it is gone. */
export async function takePlan(
  notebook: Pick<Notebook, 'wholeTrial' | 'logAll'>,
  trialId: string,
): Promise<Plan | undefined> {
  const whole = await notebook.wholeTrial(trialId)
  if (!whole) return undefined
  if (sealed(whole)) await logLook(notebook, whole, 'took its plan for another trial')
  return planInForce(whole)
}
