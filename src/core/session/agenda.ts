import { taskKey } from '@/core/clock-plan/day-tasks.ts'
import { bakeTasks } from '@/core/clock-plan/oven-bake.ts'
import { type PlannedDay, plannedDay } from '@/core/clock-plan/planned-day.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Step } from '@/core/trial/step.ts'
import type { Standing } from './effective-events.ts'
import { notServed } from './failures.ts'
import { batchOf, letterOfLevel, type Unit } from './line.ts'
import { type NextOnLine, nextOfLines } from './next-on-line.ts'
import { ovenDues } from './oven-turns.ts'
import type { Session } from './session-record.ts'
import { type StepRun, stepRuns } from './step-runs.ts'

/** The next thing to do for one dough or piece. Moments in UTC ms; lateness in seconds, below zero while there is time. */
export interface AgendaItem {
  unit: Unit
  batchId: string
  letter: string
  levelId: string | null
  do: 'start' | 'end'
  step: Step
  repeat: number
  /** When it is due by the plan; null where nothing has begun that it could be reckoned from. */
  dueAt: number | null
  /** Due moment less and plus the step's tolerance. */
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
  return inTurn(others, toOven).map((each) => asItem(session, each, now))
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

function asItem(session: Session, { run, do: what, dueAt }: NextOnLine, now: number): AgendaItem {
  const tolerance = run.step.toleranceSeconds * 1000
  const line = run.levelId === null ? null : letterOfLevel(session, run.levelId)
  return {
    unit: run.unit,
    batchId: run.batchId,
    letter: line ?? batchOf(session, run.batchId).letter,
    levelId: run.levelId,
    do: what,
    step: run.step,
    repeat: run.repeat,
    dueAt,
    earliestAt: dueAt === null ? null : dueAt - tolerance,
    latestAt: dueAt === null ? null : dueAt + tolerance,
    lateSeconds: dueAt === null ? null : (now - dueAt) / 1000,
    due: what === 'end' && run.step.endsBy.by !== 'clock' ? 'expected' : 'clock',
  }
}
