import { looksBehindCodes } from '@/core/seal/looks-behind-codes.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { Notebook } from '@/notebook/notebook.ts'

/** Writes a look behind the codes into the log of a trial, for each session whose codes are kept; it stays there for good. */
export async function logLook(
  notebook: Pick<Notebook, 'logAll'>,
  whole: WholeTrial,
  reason: string,
): Promise<void> {
  await notebook.logAll(looksBehindCodes(whole, reason))
}
