import { coveredTitle } from '@/core/seal/covered-title.ts'
import { sealed } from '@/core/seal/sealed.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/** The question of a trial as it may be read here: one that came in a file may be sealed, and its words name a level. */
export function toldQuestion(whole: WholeTrial): string {
  const { question, levels } = planInForce(whole)
  return sealed(whole) ? coveredTitle(question, levels) : question
}
