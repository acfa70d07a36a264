import type { PlanProblem } from './plan-problem.ts'
import type { Plan } from './plan-record.ts'
import type { Step } from './step.ts'

/** Longest that a piece eaten hot waits between oven and mouth: common practice, no source. */
const mostCoolingSeconds = 15 * 60

/**
 * What is wrong with the method: no steps, none that mixes or bakes, a step without time, a mark nobody could see, pieces that
 * cool long though they are served as baked.
 */
export function stepProblems({ steps, serving }: Plan): PlanProblem[] {
  const path = '/steps'
  if (steps.length === 0) return [{ path, severity: 'stop', reason: 'no-steps' }]
  const found = steps.flatMap(problemsOf)
  if (!steps.some(({ kind }) => kind === 'mix'))
    found.push({ path, severity: 'ask', reason: 'no-mix-step' })
  if (!steps.some(({ kind }) => kind === 'bake'))
    found.push({ path, severity: 'ask', reason: 'no-bake-step' })
  return serving === 'as-baked' ? [...found, ...coolingProblems(steps)] : found
}

function coolingProblems(steps: readonly Step[]): PlanProblem[] {
  return steps.flatMap(({ kind, name, waitSeconds }, index) =>
    kind === 'cool' && waitSeconds > mostCoolingSeconds
      ? [
          {
            path: `/steps/${index}/waitSeconds`,
            severity: 'ask' as const,
            ...{ reason: 'cools-as-baked' as const, name, waitSeconds },
            mostSeconds: mostCoolingSeconds,
          },
        ]
      : [],
  )
}

function problemsOf(step: Step, index: number): PlanProblem[] {
  const path = `/steps/${index}`
  const { name, handsSeconds, waitSeconds, earlySeconds, endsBy } = step
  const odd = (['handsSeconds', 'waitSeconds', 'earlySeconds', 'lateSeconds'] as const).find(
    (field) => !Number.isFinite(step[field]),
  )
  if (odd) return [{ path: `${path}/${odd}`, severity: 'stop', reason: 'not-a-number' }]
  const found: PlanProblem[] = []
  if (handsSeconds === 0 && waitSeconds === 0) {
    found.push({
      path: `${path}/handsSeconds`,
      severity: 'ask',
      reason: 'step-takes-no-time',
      name,
    })
  }
  if (waitSeconds > 0 && earlySeconds > waitSeconds) {
    const past = { reason: 'tolerance-past-wait' as const, name, earlySeconds, waitSeconds }
    found.push({ path: `${path}/earlySeconds`, severity: 'ask', ...past })
  }
  if (endsBy.by === 'mark' && isUnsaid(endsBy)) {
    found.push({ path: `${path}/endsBy`, severity: 'ask', reason: 'mark-without-words', name })
  }
  return found
}

/** A rise without its percentage, or a mark of the baker's own without words: the next session could not repeat it. */
function isUnsaid(mark: Extract<Step['endsBy'], { by: 'mark' }>): boolean {
  if (mark.mark === 'rise') return mark.risePercent === undefined
  if (mark.mark === 'bake-loss') return mark.lossPercent === undefined
  return mark.mark === 'own' && (mark.text ?? '').trim() === ''
}
