import { coveredTitle } from '@/core/seal/covered-title.ts'
import { sealed } from '@/core/seal/sealed.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { sessionsDone, stageOf } from '@/core/whole-trial/stage.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { floursOf, notesOf } from './searched-words.ts'
import type { Summary } from './summary-record.ts'

/** The line of the home list that stands for a trial: all of it follows from the trial, so it can be made again at any time. While it is
 * sealed the line holds no level, and its question only where that names none. */
export function summaryOf(whole: WholeTrial): Summary {
  const plan = planInForce(whole)
  const { trial } = whole
  const covered = sealed(whole)
  const moments = [
    trial.createdAt,
    ...[...whole.plans, ...whole.events, ...whole.ballots, ...whole.photos].map((each) => each.at),
    ...whole.sessions.map((each) => each.createdAt),
  ]
  return {
    trialId: trial.id,
    revision: trial.revision,
    question: covered ? coveredTitle(plan.question, plan.levels) : plan.question,
    factorName: plan.factor.name,
    unitOfMeasure: plan.factor.unitOfMeasure,
    levels: covered ? [] : plan.levels.map(({ label, value }) => ({ label, value })),
    stage: stageOf(whole),
    sealed: covered,
    sessionsDone: sessionsDone(whole),
    plannedSessions: plan.plannedSessions,
    lastAt: moments.reduce((last, at) => Math.max(last, at)),
    createdAt: trial.createdAt,
    archived: trial.archivedAt !== undefined,
    binned: trial.binnedAt !== undefined,
    factorKind: plan.factor.acts.on,
    flours: covered ? [] : floursOf(whole),
    notes: covered ? '' : notesOf(whole),
    ...(trial.follows ? { follows: trial.follows } : {}),
  }
}
