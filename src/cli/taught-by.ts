import { learnedPanels, type SpreadForPlan, spreadForPlan } from '@/core/learned/learned-spread.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { readTrial } from './read-trial.ts'
import { CommandTrouble } from './trouble.ts'
import type { Asked, VerbOption } from './verb.ts'

export const learnOption: VerbOption = {
  type: 'string',
  multiple: true,
  value: 'FILE',
  help: 'a finished trial of the same tasters: two or more teach how their answers scatter',
}

/**
 * How the plan's tasters scatter by the trials named with --learn, the asked one among them where it is finished; null where none was
 * named. Throws `CommandTrouble` where those named teach nothing.
 */
export function taughtSpread(asked: Asked, whole: WholeTrial, plan: Plan): SpreadForPlan | null {
  const files = asked.texts('learn')
  if (files.length === 0) return null
  const named = files.map(readTrial)
  const byId = new Map([whole, ...named].map((each) => [each.trial.id, each]))
  const taught = spreadForPlan(learnedPanels([...byId.values()]), plan)
  if (taught) return taught
  throw new CommandTrouble(
    '--learn: these files teach nothing of how the plan’s tasters scatter. It takes two finished trials that share tasters with it, one of them with a second flight or session; leave the option out to go by common practice.',
  )
}
