import { planProblems } from '@/core/trial/plan-problems.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { planPlaceText } from '@/core/wording/plan/plan-place-text.ts'
import { planProblemText } from '@/core/wording/plan/plan-problem-text.ts'
import { wrapped } from './wrapped.ts'

/** What stops the plan in force from being worked, one sentence each. */
export function planStops(whole: WholeTrial): string[] {
  const plan = planInForce(whole)
  return planProblems(plan, whole.kitchen)
    .filter(({ severity }) => severity === 'stop')
    .map((problem) => placed(planPlaceText(problem.path, plan), planProblemText(problem)))
}

/** A problem's sentence behind the name of the thing it is about, where it has one. */
export function placed(place: string, text: string): string {
  return place === '' ? text : `${place}: ${text}`
}

/** The stops over an answer that holds only once they are mended; nothing where there are none. */
export function stopsText(stops: readonly string[]): string[] {
  if (stops.length === 0) return []
  const heading = 'Still to mend in the plan'
  return [
    [heading, '═'.repeat(heading.length), ...stops.map((stop) => wrapped(stop, '- '))].join('\n'),
  ]
}
