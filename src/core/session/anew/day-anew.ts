import type { DayInTime } from '@/core/clock-plan/day-in-time.ts'
import type { PlannedDay } from '@/core/clock-plan/planned-day.ts'
import { type DayAsked, problemOfDay } from '@/core/clock-plan/problem-of-day.ts'
import type { DayProblem, Placed } from '@/core/clock-plan/search/day-problem.ts'
import { ordersTaken } from '@/core/clock-plan/search/ordered-day.ts'
import type { WorkPart } from '@/core/clock-plan/work-part.ts'
import type { Standing } from '@/core/session/effective-events.ts'
import { notServed } from '@/core/session/failures.ts'
import { piecesOfBatch, type Unit } from '@/core/session/line.ts'
import type { BenchEntry } from '@/core/session/press/new-event.ts'
import type { Session } from '@/core/session/session-record.ts'
import { stepRuns } from '@/core/session/step-runs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { partsBehind } from './parts-behind.ts'
import { type ProblemAnew, problemAnew, type WaitOfPast } from './problem-anew.ts'
import { type MadeAnew, solveAnew } from './solve-anew.ts'

/** A wait of one dough or its pieces that is, or was, longer than it may be. */
export interface LateWait {
  batchId: string
  stepId: string
  repeat: number
  /** Beyond what was planned and agreed, as it comes out; seconds. */
  seconds: number
  /** It is over: what follows was begun. */
  over: boolean
}

/** How a day goes on from now: when all is done (UTC ms), and by how much ages at baking and minutes to the mouth differ. */
export interface WayOn {
  endAt: number
  ageSpreadSeconds: number
  mouthSpreadSeconds: number
}

export interface DayAnew {
  /** When each part of the work begins, by its id; UTC ms. */
  begins: ReadonlyMap<string, number>
  /** Out of the oven's and hands' way as it is: the worst first. */
  late: LateWait[]
  /** When all would have been done by the plan, reckoned from the first hand. */
  plannedEndAt: number
  goOn: WayOn
  /** The others wait as long: offered only where the lines then differ less by a minute or more. */
  wait: (WayOn & { units: Unit[]; moreSeconds: number; press: BenchEntry[] }) | null
}

interface Today {
  session: Session
  plan: Plan
  events: readonly Standing[]
  day: PlannedDay
  /** The hours without hands, from the moment it is given (UTC ms) on. */
  inTime: (originAt: number, spanSeconds: number) => Pick<DayInTime, 'blocks'>
  now: number
}

const halfMinutes = (seconds: number) => Math.ceil(seconds / 30) * 30

/**
 * The rest of a day as the log leaves it: what is late, what that does to the others, and whether to go on or to let them wait
 * as long, so that all are equally old at the oven again. Null until something is begun and once all is done.
 */
export function dayAnew(today: Today): DayAnew | null {
  const { session, plan, events, day, now } = today
  const runs = stepRuns(session, plan, events)
  const asked = problemOfDay(plan, session)
  const lost = notServed(session, events)
  const isLost = ({ unitIds }: WorkPart) =>
    unitIds.every((id) => lost.has(id) || isWholeLost(session, id, lost))
  const behind = partsBehind(asked.parts, runs, isLost, now)
  const stamps = [...behind.begun.values()].map(({ beganAt }) => beganAt)
  const open = asked.parts.filter(({ id }) => !behind.begun.has(id) && !behind.left.has(id))
  if (stamps.length === 0 || open.length === 0) return null
  const originAt = Math.floor(Math.min(...stamps) / 1000) * 1000
  const { blocks } = today.inTime(originAt, day.spanSeconds)
  const base = { ...{ asked, ...behind }, ...{ originAt, now, blocks } }
  const orders = ordersTaken(asked.problem, day.begins)
  const first = asked.parts.find(({ id }) => behind.begun.get(id)?.beganAt === Math.min(...stamps))
  const shift = first ? (day.begins[first.id] ?? 0) : 0
  const at = (moreSeconds: ReadonlyMap<string, number>) => {
    const anewAt = (graceSeconds: number) => problemAnew({ ...base, moreSeconds, graceSeconds })
    const made =
      stillHolds(anewAt(0), { planned: day.begins, shift, moreSeconds }) ??
      solveAnew((graceSeconds) => anewAt(graceSeconds).problem, orders, asked.parts)
    return { made, ...anewAt(made.graceSeconds) }
  }
  const on = at(behind.moreSeconds)
  const asPlanned = (from: string, to: string) => {
    const hands = asked.parts.find(({ id }) => id === from)?.activeSeconds ?? 0
    const more = behind.moreSeconds.get(from) ?? 0
    return (day.begins[to] ?? 0) - (day.begins[from] ?? 0) - hands + more
  }
  const late = lateWaits(asked, on.problem, on.past, on.made.begins, asPlanned)
  return {
    begins: new Map(
      Object.entries(on.made.begins).map(([id, seconds]) => [id, originAt + seconds * 1000]),
    ),
    late,
    plannedEndAt: originAt + (day.spanSeconds - shift) * 1000,
    goOn: wayOn(on.problem, on.made, originAt),
    wait: othersWait({ asked, behind: behind.moreSeconds, open, late, originAt, on, at, session }),
  }
}

/** As near to its planned moment a part is begun as planned; seconds. */
const asPlannedSeconds = 60

/**
 * The planned times, where all that was begun was begun by them, nothing else is overdue and no wait was agreed or ripe
 * otherwise: such a day needs not be made anew.
 */
function stillHolds(
  { problem, past }: ProblemAnew,
  asked: { planned: Placed; shift: number; moreSeconds: ReadonlyMap<string, number> },
): MadeAnew | null {
  const doneAt = new Map(problem.done.map(({ task, atSeconds }) => [task, atSeconds]))
  const plannedAt = (id: string) => (asked.planned[id] ?? 0) - asked.shift
  const isOff = problem.tasks.some(({ id }) => {
    const at = doneAt.get(id) ?? Math.max(plannedAt(id), problem.nowSeconds ?? 0)
    return Math.abs(at - plannedAt(id)) > asPlannedSeconds
  })
  const isAgreed = problem.waits.some(({ from }) => (asked.moreSeconds.get(from) ?? 0) !== 0)
  const active = new Map(problem.tasks.map(({ id, activeSeconds }) => [id, activeSeconds]))
  const isRipe = past.some(
    ({ from, to, byMark, plannedSeconds, lateSeconds, doneSeconds }) =>
      byMark &&
      doneSeconds === null &&
      plannedAt(to) - (doneAt.get(from) ?? 0) - (active.get(from) ?? 0) >
        plannedSeconds + lateSeconds,
  )
  if (isOff || isAgreed || isRipe) return null
  const begins = problem.tasks.map(({ id }) => [id, doneAt.get(id) ?? plannedAt(id)])
  return {
    begins: Object.fromEntries(begins),
    ...{ rung: 0, spreadRung: 0, graceSeconds: 0, laid: false },
  }
}

const isWholeLost = (session: Session, batchId: string, lost: ReadonlySet<string>) => {
  const counted = piecesOfBatch(session, batchId).filter(({ role }) => role !== 'spare')
  return counted.length > 0 && counted.every(({ id }) => lost.has(id))
}

function lateWaits(
  { parts }: DayAsked,
  problem: DayProblem,
  past: readonly WaitOfPast[],
  begins: Placed,
  asPlanned: (from: string, to: string) => number,
): LateWait[] {
  const partOf = new Map(parts.map((part) => [part.id, part]))
  const active = new Map(problem.tasks.map(({ id, activeSeconds }) => [id, activeSeconds]))
  const found = past.flatMap((wait): LateWait[] => {
    const [from, to] = [partOf.get(wait.from), partOf.get(wait.to)]
    if (!from || !to) return []
    const comesOut =
      wait.doneSeconds ??
      (begins[wait.to] ?? 0) - (begins[wait.from] ?? 0) - (active.get(wait.from) ?? 0)
    // A day that is planned with a wait too long is not late for it.
    const planned = wait.byMark
      ? wait.plannedSeconds
      : Math.max(wait.plannedSeconds, asPlanned(wait.from, wait.to))
    const seconds = comesOut - planned
    if (seconds <= wait.lateSeconds) return []
    const { batchId, step, repeat } = from.forAll ? to : from
    const over = wait.doneSeconds !== null
    return [{ batchId, stepId: step.id, repeat, seconds: Math.round(seconds), over }]
  })
  return found.toSorted(
    (one, other) => Number(one.over) - Number(other.over) || other.seconds - one.seconds,
  )
}

function wayOn(problem: DayProblem, { begins }: MadeAnew, originAt: number): WayOn {
  const active = new Map(problem.tasks.map(({ id, activeSeconds }) => [id, activeSeconds]))
  const spreadOf = (kind: string) =>
    Math.max(
      0,
      ...problem.equal
        .filter(({ name, spans }) => name.startsWith(kind) && spans.length > 1)
        .map(({ spans }) => {
          const ages = spans.map(
            ({ from, to, fromEnd, lessSeconds = 0 }) =>
              (begins[to] ?? 0) -
              (begins[from] ?? 0) -
              (fromEnd ? (active.get(from) ?? 0) : 0) -
              lessSeconds,
          )
          return Math.max(...ages) - Math.min(...ages)
        }),
    )
  const ends = problem.tasks.map(({ id, activeSeconds }) => (begins[id] ?? 0) + activeSeconds)
  return {
    endAt: originAt + Math.max(...ends) * 1000,
    ageSpreadSeconds: spreadOf('age'),
    mouthSpreadSeconds: spreadOf('oven'),
  }
}

interface OthersWait {
  asked: DayAsked
  behind: ReadonlyMap<string, number>
  open: readonly WorkPart[]
  late: readonly LateWait[]
  originAt: number
  on: { made: MadeAnew; problem: DayProblem }
  at: (more: ReadonlyMap<string, number>) => { made: MadeAnew; problem: DayProblem }
  session: Session
}

/** The others wait so much longer at the same step, where they still can, the worst lateness first that it mends. */
function othersWait(of: OthersWait): DayAnew['wait'] {
  const { asked, open, late, originAt, on, at, behind } = of
  const before = wayOn(on.problem, on.made, originAt)
  const isOpen = new Set(open.map(({ id }) => id))
  for (const { batchId, stepId, repeat, seconds } of late) {
    const own = asked.parts.filter(
      (part) =>
        part.what === 'work' &&
        part.step.id === stepId &&
        part.repeat === repeat &&
        part.step.endsBy.by === 'clock' &&
        part.step.kind !== 'bake' &&
        !part.forAll,
    )
    const lateParts = own.filter((part) => part.batchId === batchId)
    const lateMore = Math.max(0, ...lateParts.map(({ id }) => behind.get(id) ?? 0))
    const wanted = halfMinutes(lateMore + seconds)
    const others = own.filter(
      ({ id, batchId: other }) =>
        other !== batchId &&
        !late.some(
          (one) => one.batchId === other && one.stepId === stepId && one.seconds > seconds - 60,
        ) &&
        (behind.get(id) ?? 0) < wanted - 30 &&
        asked.parts.some(({ id: next, after }) =>
          after.some(({ from }) => from === id && isOpen.has(next)),
        ),
    )
    if (others.length === 0) continue
    const more = new Map([...behind, ...others.map(({ id }) => [id, wanted] as const)])
    const made = at(more)
    const way = wayOn(made.problem, made.made, originAt)
    const gained =
      before.ageSpreadSeconds +
      before.mouthSpreadSeconds -
      way.ageSpreadSeconds -
      way.mouthSpreadSeconds
    if (made.made.laid || gained < 60) continue
    const units = others.flatMap(({ unitIds }) => unitIds.map((id) => unitOf(of.session, id)))
    return {
      ...way,
      ...{ units, moreSeconds: wanted },
      press: units.map((about) => ({
        ...{ kind: 'wait-changed', about, stepId, repeat, moreSeconds: wanted },
      })),
    }
  }
  return null
}

const unitOf = ({ batches }: Session, id: string): Unit => ({
  kind: batches.some((batch) => batch.id === id) ? 'batch' : 'piece',
  id,
})
