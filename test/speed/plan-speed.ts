import { dayCost } from '@/core/clock-plan/day-cost.ts'
import { designOfPlan } from '@/core/design/design-of-plan.ts'
import { whatWouldHelp } from '@/core/design/what-would-help.ts'
import { waterPlan } from '@/core/dough-temperature/water-plan.ts'
import { fairnessOfPlan } from '@/core/fairness/fairness-of-plan.ts'
import { previewNextSession } from '@/core/session/preview-sessions.ts'
import { levelRiders } from '@/core/trial/level-riders.ts'
import { planProblems } from '@/core/trial/plan-problems.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { planForSpeed } from './plan-for-speed.ts'
import { medianMilliseconds } from './timed.ts'

type PlanForSpeed = ReturnType<typeof planForSpeed>

const runs = 31

/** Measures what the Plan page computes after every key, on the screen's thread and off it; says it and compares nothing. */
export function measurePlan(say: (what: string, milliseconds: number) => void): void {
  const { plan } = planForSpeed()
  const { levels, tasters, flights, sessions, unit, margin } = designOfPlan(plan)
  const design = { levels, levelValues: null, tasters, flights, sessions, unit, margin }
  const works: [string, (fresh: PlanForSpeed) => void][] = [
    ['the weigh sheet', ({ plan, kitchen }) => weighSheet(plan, kitchen)],
    ['the water of every batch', ({ plan, kitchen }) => waterPlan(plan, kitchen)],
    ['the riders', ({ plan }) => levelRiders(plan)],
    ['the problems', ({ plan, kitchen }) => planProblems(plan, kitchen)],
    [
      'the cost of the day',
      ({ plan }) => {
        const next = previewNextSession(plan, 1, [])
        if (next.ok) dayCost(plan, next.session)
      },
    ],
    [
      'the fairness check (off the screen)',
      ({ plan, kitchen }) => fairnessOfPlan(plan, { kitchen, trialSeed: 1, sessions: [] }),
    ],
    ['what would help (off the screen)', () => whatWouldHelp(design)],
  ]
  for (const [what, work] of works) {
    // A plan of its own for every run, as after every key: nothing that was worked out for another serves it.
    const plans = Array.from({ length: 2 * runs }, planForSpeed)
    const measured = medianMilliseconds(() => {
      const fresh = plans.pop()
      if (!fresh) throw new Error('more runs than plans')
      work(fresh)
    }, runs)
    say(`${what} of a plan, 8 levels x 16 ingredients`, measured)
  }
}
