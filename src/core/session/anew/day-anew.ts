import type { DayInTime } from '@/core/clock-plan/day-in-time.ts'
import type { PlannedDay } from '@/core/clock-plan/planned-day.ts'
import { problemOfDay } from '@/core/clock-plan/problem-of-day.ts'
import { ordersTaken } from '@/core/clock-plan/search/ordered-day.ts'
import type { WorkPart } from '@/core/clock-plan/work-part.ts'
import type { Standing } from '@/core/session/effective-events.ts'
import { notServed } from '@/core/session/failures.ts'
import { piecesOfBatch } from '@/core/session/line.ts'
import type { Session } from '@/core/session/session-record.ts'
import { stepRuns } from '@/core/session/step-runs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { type TaskAnew, tasksAnew } from './goes-at.ts'
import { type LateWait, lateWaits } from './late-waits.ts'
import { type OthersWait, othersWait } from './others-wait.ts'
import { partsBehind } from './parts-behind.ts'
import { problemAnew } from './problem-anew.ts'
import { solveAnew } from './solve-anew.ts'
import { stillHolds } from './still-holds.ts'
import { type WayOn, wayOn } from './way-on.ts'

export interface DayAnew {
  /** When the hands come to each task, by its key. */
  tasks: ReadonlyMap<string, TaskAnew>
  /** Out of the oven's and hands' way as it is: the worst first. */
  late: LateWait[]
  /** When all would have been done by the plan, reckoned from the first hand. */
  plannedEndAt: number
  goOn: WayOn
  /** The others wait as long: offered only where the lines then differ less by a minute or more. */
  wait: OthersWait | null
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
    tasks: tasksAnew(asked, on.made.begins, behind.left, originAt),
    late,
    plannedEndAt: originAt + (day.spanSeconds - shift) * 1000,
    goOn: wayOn(on.problem, on.made, originAt),
    wait: othersWait({ asked, behind: behind.moreSeconds, open, late, originAt, on, at, session }),
  }
}

const isWholeLost = (session: Session, batchId: string, lost: ReadonlySet<string>) => {
  const counted = piecesOfBatch(session, batchId).filter(({ role }) => role !== 'spare')
  return counted.length > 0 && counted.every(({ id }) => lost.has(id))
}
