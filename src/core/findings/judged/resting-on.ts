import type { RestsOn } from '@/core/house/house-record.ts'
import type { Level } from '@/core/trial/level.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { sessionsDone } from '@/core/whole-trial/stage.ts'
import { toldTrial } from '@/core/whole-trial/told-trial.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/** What a house formula rests on when a level of a trial is adopted now: its question, sessions done, people who tasted. */
export function restingOn(
  whole: WholeTrial,
  level: Level,
  { because, levelName, said }: { because: RestsOn['because']; levelName: string; said: string },
): RestsOn {
  const plan = planInForce(whole)
  const told = toldTrial(whole)
  return {
    trialId: whole.trial.id,
    question: plan.question,
    level: levelName || level.label,
    because,
    sessions: sessionsDone(told),
    tasters: new Set(told.ballots.map(({ tasterId }) => tasterId)).size,
    said,
  }
}
