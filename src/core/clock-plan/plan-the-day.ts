import type { RungOf } from './search/day-demands.ts'
import type { DayProblem } from './search/day-problem.ts'
import { type Culprit, culpritsOf, type Mend, mendsOf } from './search/mends.ts'
import {
  type Better,
  type Budget,
  type DayPlan,
  goes,
  mostRung,
  solveDay,
} from './search/solve-day.ts'
import { straightened } from './straightened.ts'
import type { WorkPart } from './work-part.ts'

/** The rung of a step's waits, in quarters of its tolerance. */
export interface StepRung {
  step: string
  rung: number
}

/**
 * A day's plan as it is shown. `fits`: all waits are within their tolerance. Else it is the least bad one, with the steps
 * whose waits pass it, what collides and what would mend it.
 */
export interface ClockPlan extends DayPlan {
  fits: boolean
  stepRungs: StepRung[]
  mends: Mend[]
  culprits: Culprit[]
}

/**
 * The best plan within the budget, half of which is kept for what follows the first answer: where the waits cannot all be
 * within a quarter of their tolerance, each step's own rung is lowered in turn, those nearest the end of the method first, so
 * that one narrow place loosens no other wait. Null where not even waits far beyond their tolerance make a plan.
 */
export function planTheDay(
  problem: DayProblem,
  parts: readonly WorkPart[],
  budget: Budget,
  better?: Better,
): ClockPlan | null {
  const straight = (plan: DayPlan, rungOf: RungOf): DayPlan => ({
    ...plan,
    begins: straightened(problem, parts, plan.begins, rungOf),
  })
  const part = (share: number) => ({ ...budget, milliseconds: budget.milliseconds * share })
  const first = solveDay(problem, part(0.5), better ? { better } : {})
  const within = first.ok ? first.plan.rung : null
  if (first.ok && within === 1)
    return { ...straight(first.plan, () => 1), fits: true, stepRungs: [], mends: [], culprits: [] }
  const mends = within === null ? mendsOf(problem, part(0.3)) : []
  const culprits = within === null ? culpritsOf(problem, part(0.1)) : []
  const rung = within ?? widestOf(mends)
  if (rung === null) return null
  const stepRungs = eachLowered(problem, rung, part(0.1))
  const ofStep = new Map(stepRungs.map((one) => [one.step, one.rung]))
  const stepOf = new Map(problem.tasks.map(({ id, step }) => [id, step]))
  const ownRung: RungOf = ({ from }) => ofStep.get(stepOf.get(from) ?? '') ?? rung
  const solved = solveDay(problem, part(0.3), {
    ...(better ? { better } : {}),
    most: 1,
    extra: ownRung,
  })
  const plan = solved.ok
    ? straight(solved.plan, (wait) => Math.max(1, ownRung(wait)))
    : first.ok
      ? straight(first.plan, () => first.plan.rung)
      : null
  const loosened = stepRungs.filter((one) => one.rung > 1)
  return plan && { ...plan, rung, fits: rung <= mostRung, stepRungs: loosened, mends, culprits }
}

function widestOf(mends: readonly Mend[]): number | null {
  const wider = mends.find((one) => one.mend === 'wider-waits')
  return wider && 'rung' in wider ? wider.rung : null
}

/** The least rung of each step's waits with those of the others as they stand, the last steps first. */
function eachLowered(problem: DayProblem, rung: number, budget: Budget): StepRung[] {
  const stepOf = new Map(problem.tasks.map(({ id, step }) => [id, step]))
  const steps = [...new Set(problem.waits.map(({ from }) => stepOf.get(from) ?? ''))]
  const own = new Map(steps.map((step) => [step, rung]))
  const share = { ...budget, milliseconds: budget.milliseconds / Math.max(1, steps.length * 3) }
  for (const step of steps.toReversed()) {
    let low = 0
    let high = rung
    while (low + 1 < high) {
      const middle = Math.floor((low + high) / 2)
      const tried = new Map(own).set(step, middle)
      const possible = goes(problem, share, ({ from }) => tried.get(stepOf.get(from) ?? '') ?? rung)
      if (possible === true) high = middle
      else low = middle
    }
    own.set(step, high)
  }
  return steps.map((step) => ({ step, rung: own.get(step) ?? rung }))
}
