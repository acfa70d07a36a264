import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/** The ids of all kitchen things a trial names: tools, flour lots and tasters of every revision, and whoever scored. */
export function kitchenIdsOf(trial: Omit<WholeTrial, 'trial' | 'photos' | 'kitchen'>): Set<string> {
  const ids = new Set<string>()
  for (const plan of trial.plans) {
    for (const id of plan.kitchenIds) ids.add(id)
    for (const taster of plan.tasters) ids.add(taster.tasterId)
    for (const { flourLotId } of plan.formula.ingredients)
      if (flourLotId !== undefined) ids.add(flourLotId)
  }
  for (const { dealt } of trial.sessions)
    for (const each of [...dealt.tasterOrders, ...dealt.sets]) ids.add(each.tasterId)
  for (const { about } of trial.events) if (about.kind === 'taster') ids.add(about.id)
  for (const ballot of trial.ballots) ids.add(ballot.tasterId)
  return ids
}
