import type { ClockPlan } from './plan-the-day.ts'
import { planTheDay } from './plan-the-day.ts'
import type { DayProblem, Placed, Wait } from './search/day-problem.ts'
import { ordersTaken } from './search/ordered-day.ts'
import { type Budget, goes, mostRung } from './search/solve-day.ts'
import type { WorkPart } from './work-part.ts'

/** How far a rise may come sooner or later than expected, as a share of its wait, where nothing is learned: our own guess. */
const spreadShare = 0.15

/** A day may be this much longer, at most, for hands that are free when a mark comes late. */
const mostLonger = 1.05

/** One way in which marks may come: all together or one dough's alone, sooner or later; `rung` null where a wait then breaks. */
export interface MarkTry {
  /** The dough whose marks alone come otherwise; null for all. */
  batchId: string | null
  comes: 'sooner' | 'later'
  rung: number | null
}

export interface TriedMarks {
  share: number
  tries: MarkTry[]
  /** The hands are kept free after each expected mark, so that more of them hold; for so many seconds at most, else 0. */
  freeSeconds: number
}

type Day = Pick<ClockPlan, 'begins' | 'rung' | 'spanSeconds' | 'night'>

/** The waits that a mark or a reading ends, by the part they follow; bakes apart, beside which somebody stands. */
function markedWaits(problem: DayProblem, parts: readonly WorkPart[]): Map<Wait, WorkPart> {
  const marked = new Map(
    parts
      .filter(({ what, step }) => what === 'work' && step.endsBy.by !== 'clock')
      .filter(({ step }) => step.kind !== 'bake')
      .map((part) => [part.id, part]),
  )
  return new Map(
    problem.waits.flatMap((wait) => {
      const part = marked.get(wait.from)
      return part && wait.seconds > 0 ? [[wait, part] as const] : []
    }),
  )
}

const spreadOf = ({ seconds }: Wait) => Math.round(seconds * spreadShare)

/**
 * Tries a plan against marks that come sooner or later than expected: all of them, and each dough's alone. The orders stay as
 * planned, and from the first mark on the times follow; a try fails where some wait then passes its tolerance. No try is made where nothing ends by a
 * mark. The day's end may move with it, as a late rise moves it.
 */
export function triedMarks(
  problem: DayProblem,
  parts: readonly WorkPart[],
  begins: Placed,
  budget: Budget,
): MarkTry[] {
  const marked = markedWaits(problem, parts)
  if (marked.size === 0) return []
  const orders = [...problem.orders, ...ordersTaken(problem, begins)]
  const first = Math.min(...Object.values(begins))
  const batchIds = [...new Set([...marked.values()].map(({ batchId }) => batchId))]
  const lines = batchIds.length > 1 ? [null, ...batchIds] : [null]
  const asked = lines.flatMap((batchId) =>
    (['sooner', 'later'] as const).map((comes) => ({ batchId, comes })),
  )
  const share = { ...budget, milliseconds: budget.milliseconds / (asked.length * mostRung) }
  return asked.map(({ batchId, comes }): MarkTry => {
    const knownAt: number[] = []
    const waits = problem.waits.map((wait) => {
      const part = marked.get(wait)
      if (!part || (batchId !== null && part.batchId !== batchId)) return wait
      const seconds = wait.seconds + (comes === 'later' ? spreadOf(wait) : -spreadOf(wait))
      const from = (begins[wait.from] ?? 0) + part.activeSeconds
      knownAt.push(from + Math.min(seconds, wait.seconds))
      return { ...wait, seconds }
    })
    // Nobody knows how a mark comes before the first of them is there, or was to be: until then all is done as planned.
    const known = Math.min(...knownAt)
    const done = problem.tasks
      .map(({ id }) => ({ task: id, atSeconds: begins[id] ?? 0 }))
      .filter(({ atSeconds }) => atSeconds < known)
    const tried = { ...problem, waits, orders, done, window: { startSeconds: first } }
    for (let rung = 1; rung <= mostRung; rung += 1)
      if (goes(tried, share, () => rung) === true) return { batchId, comes, rung }
    return { batchId, comes, rung: null }
  })
}

/**
 * A plan held against its marks. Where one breaks it, the hands are kept free after each expected mark, for as long as it may
 * be late and the ripe dough may stand, and that plan is taken if more tries hold and the day is at most a twentieth longer.
 */
export function heldAgainstMarks<Plan extends Day>(
  problem: DayProblem,
  parts: readonly WorkPart[],
  plan: Plan,
  budget: Budget,
): { plan: Plan | ClockPlan; marks: TriedMarks | null } {
  const part = (milliseconds: number) => ({ ...budget, milliseconds })
  const tries = triedMarks(problem, parts, plan.begins, part(budget.milliseconds / 4))
  if (tries.length === 0) return { plan, marks: null }
  const asItIs = { plan, marks: { share: spreadShare, tries, freeSeconds: 0 } }
  const broken = (all: readonly MarkTry[]) => all.filter(({ rung }) => rung === null).length
  if (broken(tries) === 0 || plan.rung > mostRung || plan.night) return asItIs
  const { freed, freeSeconds } = withFreeHands(problem, parts)
  const other = planTheDay(freed, parts, part(budget.milliseconds / 2))
  if (!other?.fits || other.night || other.rung > plan.rung + 1) return asItIs
  if (other.spanSeconds > plan.spanSeconds * mostLonger) return asItIs
  const again = triedMarks(problem, parts, other.begins, part(budget.milliseconds / 4))
  if (broken(again) >= broken(tries)) return asItIs
  return { plan: other, marks: { share: spreadShare, tries: again, freeSeconds } }
}

/** The day with hands that stay with a dough for a while after its mark is expected. */
function withFreeHands(
  problem: DayProblem,
  parts: readonly WorkPart[],
): { freed: DayProblem; freeSeconds: number } {
  const free = new Map<string, number>()
  for (const wait of markedWaits(problem, parts).keys()) {
    const seconds = Math.min(spreadOf(wait), wait.lateSeconds)
    free.set(wait.to, Math.max(free.get(wait.to) ?? 0, seconds))
  }
  const holds = problem.tasks.flatMap(({ id, uses }) => {
    const afterSeconds = free.get(id)
    const hands = uses.find(({ resource }) => resource === 'hands')
    return afterSeconds && hands ? [{ ...hands, from: id, to: id, afterSeconds }] : []
  })
  const held = new Set(holds.map(({ from }) => from))
  const tasks = problem.tasks.map((task) =>
    held.has(task.id)
      ? { ...task, uses: task.uses.filter(({ resource }) => resource !== 'hands') }
      : task,
  )
  return {
    freed: { ...problem, tasks, stays: [...problem.stays, ...holds] },
    freeSeconds: Math.max(0, ...free.values()),
  }
}
