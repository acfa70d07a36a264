import { isForAllDoughs, taskKey } from '@/core/clock-plan/day-tasks.ts'
import { bakeTasks } from '@/core/clock-plan/oven-bake.ts'
import { type PlannedDay, plannedDay } from '@/core/clock-plan/planned-day.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Step } from '@/core/trial/step.ts'
import { stepTolerance } from '@/core/trial/step-tolerance.ts'
import type { Standing } from './effective-events.ts'
import { notServed } from './failures.ts'
import { batchOf, letterOfLevel, type Unit } from './line.ts'
import { type NextOnLine, nextOfLines } from './next-on-line.ts'
import { ovenDues } from './oven-dues.ts'
import type { Session } from './session-record.ts'
import { type StepRun, stepRuns } from './step-runs.ts'

/** The next thing to do for one dough or piece. Moments in UTC ms; lateness in seconds, below zero while there is time. */
export interface AgendaItem {
  unit: Unit
  /** All doughs it is done to at once; otherwise the unit alone. */
  units: readonly Unit[]
  batchId: string
  letter: string
  levelId: string | null
  do: 'start' | 'end'
  /** It runs and its work is not said to be done: a wait is still to begin. */
  handsOn: boolean
  step: Step
  repeat: number
  /** When it is due by the plan; null where nothing has begun that it could be reckoned from. */
  dueAt: number | null
  /** Due moment less the early tolerance of the wait that ends with it, and plus the late one. */
  earliestAt: number | null
  latestAt: number | null
  lateSeconds: number | null
  /** `expected`: the step ends by a mark or a reading, the moment is a guess. */
  due: 'clock' | 'expected'
}

/**
 * What to do next for every dough and piece, soonest first: end the step that runs, or start the next one. A running step is
 * due to end after its hands and its wait; the next is as long after it as the day is planned; the first step of a dough as
 * long after that of the dough before it. A bake is due when the oven has a place for it, in the order of the loads. A step
 * that was passed over stays passed over. Lines that are through, and pieces that will not be served, are not listed. The
 * planned `day` may be handed in, since it stays the same from press to press.
 */
export function agenda(
  session: Session,
  plan: Plan,
  effective: readonly Standing[],
  now: number,
  day: PlannedDay = plannedDay(plan, session),
): AgendaItem[] {
  const lost = notServed(session, effective)
  const runs = stepRuns(session, plan, effective)
  const nextOf = nextOfLines(session, day, runs, now)
  const dues = ovenDues({ session, plan, day, runs, lost, nextOf }, now)
  const found = new Map<string, NextOnLine>()
  for (const [id, next] of nextOf) if (!lost.has(id)) found.set(taskKey(next.run), next)
  const place = new Map(runs.map((run, at) => [run, at]))
  const placeOf = ({ run }: NextOnLine) => place.get(run) ?? 0
  const next = [...found.values()].toSorted((one, other) => placeOf(one) - placeOf(other))
  const loaded = [...dues.keys()]
  const turnOf = (id: string) => (loaded.includes(id) ? loaded.indexOf(id) : loaded.length)
  const toOven = next
    .filter((each) => isToBake(each, runs))
    .map((each) => ({ ...each, dueAt: dues.get(each.run.unit.id) ?? each.dueAt }))
    .toSorted((one, other) => turnOf(one.run.unit.id) - turnOf(other.run.unit.id))
  const others = next.filter((each) => !isToBake(each, runs))
  return onceForAll(inTurn(others, toOven).map((each) => asItem(session, each, now)))
}

const isToBake = ({ run, do: what }: NextOnLine, runs: readonly StepRun[]) =>
  what === 'start' &&
  run.step.kind === 'bake' &&
  run === bakeTasks(runs.filter(({ unit }) => unit.id === run.unit.id))[0]

/** By due moment, what cannot be reckoned last; into the oven in turn, however the dues lie, and after what is due as soon. */
function inTurn(others: readonly NextOnLine[], toOven: readonly NextOnLine[]): NextOnLine[] {
  const dueOf = ({ dueAt }: NextOnLine) => dueAt ?? Number.POSITIVE_INFINITY
  let latest = 0
  const keyed = [
    ...others.map((next) => ({ next, key: dueOf(next) })),
    ...toOven.map((next) => {
      latest = Math.max(latest, dueOf(next))
      return { next, key: latest }
    }),
  ]
  return keyed
    .toSorted((one, other) => (one.key === other.key ? 0 : one.key - other.key))
    .map(({ next }) => next)
}

/** Steps that are done once for all doughs stand as one item: that of the dough which is due first. */
function onceForAll(items: readonly AgendaItem[]): AgendaItem[] {
  const sameAs = (item: AgendaItem) => (other: AgendaItem) =>
    isForAllDoughs(other) &&
    other.step.id === item.step.id &&
    other.repeat === item.repeat &&
    other.do === item.do &&
    other.handsOn === item.handsOn
  return items.flatMap((item, at) => {
    if (!isForAllDoughs(item)) return [item]
    const all = items.filter(sameAs(item))
    if (items.findIndex(sameAs(item)) !== at) return []
    if (all.length === 1) return [item]
    return [{ ...item, units: all.map(({ unit }) => unit), letter: 'all doughs', levelId: null }]
  })
}

/** Whether a step's work is followed by a wait of its own, so that hands off means something. */
export function waitsAfterWork({ kind, handsSeconds, waitSeconds, endsBy }: Step): boolean {
  return kind !== 'bake' && endsBy.by === 'clock' && handsSeconds > 0 && waitSeconds > 0
}

function asItem(
  session: Session,
  { run, do: what, dueAt, ends }: NextOnLine,
  now: number,
): AgendaItem {
  const { earlySeconds, lateSeconds } = stepTolerance(ends)
  const line = run.levelId === null ? null : letterOfLevel(session, run.levelId)
  return {
    unit: run.unit,
    units: [run.unit],
    batchId: run.batchId,
    letter: line ?? batchOf(session, run.batchId).letter,
    levelId: run.levelId,
    do: what,
    handsOn: what === 'end' && waitsAfterWork(run.step) && run.handsOffAt === null,
    step: run.step,
    repeat: run.repeat,
    dueAt,
    earliestAt: dueAt === null ? null : dueAt - earlySeconds * 1000,
    latestAt: dueAt === null ? null : dueAt + lateSeconds * 1000,
    lateSeconds: dueAt === null ? null : (now - dueAt) / 1000,
    due: what === 'end' && run.step.endsBy.by !== 'clock' ? 'expected' : 'clock',
  }
}
