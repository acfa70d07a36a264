import { bakedApart, type NightBetween, nightBetween } from './baked-together.ts'
import type { RungOf } from './search/day-demands.ts'
import type { DayProblem, Placed } from './search/day-problem.ts'
import type { Mend } from './search/mend.ts'
import { type Culprit, culpritsOf, leastRung, mendsOf } from './search/mends.ts'
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

/** By how many quarters of its tolerance a step's waits are off at most; `isOut` where they begin as its pieces leave the oven. */
export interface StepRung {
  step: string
  isOut: boolean
  rung: number
}

/**
 * A day's plan as it is shown. `fits`: all waits are within their tolerance. Else it is the least bad one, with the steps
 * whose waits pass it, what collides and what would mend it. `night`: one that parts the bakes, where nothing keeps them
 * together within the tolerances, and the mends join them; or where the method itself parts them.
 */
export interface ClockPlan extends DayPlan {
  fits: boolean
  night: NightBetween | null
  stepRungs: StepRung[]
  mends: Mend[]
  culprits: Culprit[]
}

/**
 * The best plan of a day. Half of the budget is the first answer's; where nothing fits, what collides, the mends and the least bad
 * plan have about as much again. The ladder: all bakes on one side
 * of each night and all waits within their tolerance; else the waits alone (what would join the bakes is among the mends);
 * else waits beyond their tolerance, as little as can be. Null where not even waits far beyond it make a plan.
 */
export function planTheDay(
  problem: DayProblem,
  parts: readonly WorkPart[],
  budget: Budget,
  better?: Better,
): ClockPlan | null {
  const part = (share: number) => ({ ...budget, milliseconds: budget.milliseconds * share })
  const until = budget.clock() + budget.milliseconds
  const told = better ? { better } : {}
  const nightIn = ({ begins }: DayPlan) => nightBetween(parts, problem, begins)
  const first = solveDay(problem, part(0.5), told)
  if (first.ok) {
    const laid = stepByStep(
      { problem, parts, rung: first.plan.rung, first: first.plan },
      part,
      told,
    )
    return laid && { ...laid, fits: true, night: nightIn(laid), mends: [], culprits: [] }
  }
  const left = Math.max(0.3 * budget.milliseconds, (until - budget.clock()) / 2)
  const mends = mendsOf(problem, { ...budget, milliseconds: left })
  const culprits = culpritsOf(problem, part(0.1))
  const wider = widestOf(mends)
  const apart = bakedApart(problem)
  const parted = apart && solveDay(apart, part(0.2), told)
  const partedRung = parted?.ok ? parted.plan.rung : apart && leastRung(apart, part(0.1))
  const splits = apart !== null && partedRung !== null && partedRung < (wider ?? partedRung + 1)
  const rung = splits ? partedRung : wider
  if (rung === null) return null
  const found = parted?.ok ? parted.plan : null
  const laid = stepByStep(
    { problem: splits ? apart : problem, parts, rung, first: found },
    part,
    told,
  )
  if (!laid) return null
  // By what the plan that is shown uses: a mend of wider waits asks for no more.
  const used = Math.max(0, ...laid.stepRungs.map((one) => one.rung))
  const fits = used <= mostRung
  const others = mends.filter(({ mend }) => mend !== 'wider-waits')
  const widest = fits ? [] : [{ mend: 'wider-waits' as const, rung: used }]
  const goesAsAsked = fits && !splits
  return {
    ...laid,
    // Above the tolerance the least rung is the least that was found: what a search left open may go lower.
    proved: {
      ...laid.proved,
      rung: laid.proved.rung && first.reason === 'nothing-fits' && fits,
    },
    fits,
    night: nightIn(laid),
    mends: goesAsAsked ? [] : [...others, ...widest],
    culprits: goesAsAsked ? [] : culprits,
  }
}

interface Stepped {
  problem: DayProblem
  parts: readonly WorkPart[]
  /** Within which all waits go. */
  rung: number
  /** A plan within it, if there is one already. */
  first: DayPlan | null
}

/**
 * Where the waits cannot all be within a quarter of their tolerance, each step's own rung is lowered in turn, those nearest
 * the end of the method first, so that one narrow place loosens no other wait.
 */
function stepByStep(
  { problem, parts, rung, first }: Stepped,
  part: (share: number) => Budget,
  told: { better?: Better },
): (DayPlan & { stepRungs: StepRung[] }) | null {
  const straight = (plan: DayPlan, rungOf: RungOf): DayPlan => ({
    ...plan,
    rung,
    begins: straightened(bakedApart(problem) ?? problem, parts, plan.begins, rungOf),
  })
  if (first && rung === 1) return { ...straight(first, () => 1), stepRungs: [] }
  const stepRungs = eachLowered(problem, rung, part(0.1))
  const ofStep = new Map(stepRungs.map((one) => [one.step, one.rung]))
  const stepOf = new Map(problem.tasks.map(({ id, step }) => [id, step]))
  const ownRung: RungOf = ({ from }) => ofStep.get(stepOf.get(from) ?? '') ?? rung
  const solved = solveDay(problem, part(0.3), { ...told, most: 1, extra: ownRung })
  const plan = solved.ok
    ? straight(solved.plan, (wait) => Math.max(1, ownRung(wait)))
    : first && straight(first, () => first.rung)
  return plan && { ...plan, stepRungs: usedRungs(problem, parts, plan.begins) }
}

/** By how many quarters of its tolerance the waits after each step are off in this plan at most, above one; in the method's order. */
function usedRungs(problem: DayProblem, parts: readonly WorkPart[], begins: Placed): StepRung[] {
  const taskOf = new Map(problem.tasks.map((task) => [task.id, task]))
  const pulls = new Set(parts.flatMap(({ id, what }) => (what === 'pull' ? [id] : [])))
  const used = new Map<string, StepRung>()
  for (const { from, to, seconds, earlySeconds, lateSeconds } of problem.waits) {
    const { step = '', activeSeconds = 0 } = taskOf.get(from) ?? {}
    const off = (begins[to] ?? 0) - (begins[from] ?? 0) - activeSeconds - seconds
    const tolerance = off < 0 ? earlySeconds : lateSeconds
    const quarters = off === 0 || tolerance === 0 ? 0 : Math.ceil((Math.abs(off) * 4) / tolerance)
    const isOut = pulls.has(from)
    const key = `${step} ${isOut}`
    used.set(key, { step, isOut, rung: Math.max(used.get(key)?.rung ?? 0, quarters) })
  }
  return [...used.values()].filter(({ rung }) => rung > 1)
}

function widestOf(mends: readonly Mend[]): number | null {
  const wider = mends.find((one) => one.mend === 'wider-waits')
  return wider && 'rung' in wider ? wider.rung : null
}

/** The least rung of each step's waits with those of the others as they stand, the last steps first. */
function eachLowered(
  problem: DayProblem,
  rung: number,
  budget: Budget,
): { step: string; rung: number }[] {
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
