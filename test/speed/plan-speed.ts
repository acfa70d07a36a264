import { dayCost } from '@/core/design/day-cost.ts'
import { designOfPlan } from '@/core/design/design-of-plan.ts'
import { whatWouldHelp } from '@/core/design/what-would-help.ts'
import { waterPlan } from '@/core/dough-temperature/water-plan.ts'
import { fairnessOfPlan } from '@/core/fairness/fairness-of-plan.ts'
import { levelRiders } from '@/core/trial/level-riders.ts'
import { planProblems } from '@/core/trial/plan-problems.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { planForSpeed } from './plan-for-speed.ts'
import { medianMilliseconds } from './timed.ts'

/** Measures what the Plan page computes after every key, on the screen's thread and off it; says it and compares nothing. */
export function measurePlan(say: (what: string, milliseconds: number) => void): void {
  const { plan, kitchen } = planForSpeed()
  const circumstances = { kitchen, trialSeed: 1, sessions: [] }
  const { levels, tasters, flights, sessions, unit, margin } = designOfPlan(plan)
  const design = { levels, levelValues: null, tasters, flights, sessions, unit, margin }
  const works: [string, () => void][] = [
    ['the weigh sheet', () => weighSheet(plan, kitchen)],
    ['the water of every batch', () => waterPlan(plan, kitchen)],
    ['the riders', () => levelRiders(plan)],
    ['the problems', () => planProblems(plan, kitchen)],
    ['the cost of the day', () => dayCost(plan)],
    ['the fairness check (off the screen)', () => fairnessOfPlan(plan, circumstances)],
    ['what would help (off the screen)', () => whatWouldHelp(design)],
  ]
  for (const [what, work] of works)
    say(`${what} of a plan, 8 levels x 16 ingredients`, medianMilliseconds(work, 31))
}
