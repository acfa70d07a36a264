import type { DayAsked } from '@/core/clock-plan/problem-of-day.ts'
import type { Block, DayProblem, Stay, Wait } from '@/core/clock-plan/search/day-problem.ts'
import type { PartsBehind } from './parts-behind.ts'

/** A wait that began in the past, with what it was to be; seconds. Where it is over already, how long it was. */
export interface WaitOfPast {
  from: string
  to: string
  plannedSeconds: number
  lateSeconds: number
  /** A mark or reading ends it: it is not late before the mark is there. */
  byMark: boolean
  doneSeconds: number | null
}

export interface ProblemAnew {
  problem: DayProblem
  past: WaitOfPast[]
}

interface Anew extends PartsBehind {
  asked: DayAsked
  /** Second 0 (UTC ms) and now. */
  originAt: number
  now: number
  blocks: readonly Block[]
  /** So much later than they may, waits out of the past may end: the least with which the day goes. */
  graceSeconds: number
}

/**
 * What is left of a day as a problem for the search: what was done is fixed where it was done, nothing else begins before now,
 * and what is past and cannot be helped asks nothing of the rest. A wait that runs goes on by its own tolerance; one that is
 * over its time ends now at the soonest. A mark that was reached sets its own time, and one that is not yet there is waited for.
 */
export function problemAnew(anew: Anew): ProblemAnew {
  const { asked, begun, left, originAt, now } = anew
  const seconds = (at: number) => Math.round((at - originAt) / 1000)
  const nowSeconds = seconds(now)
  const { problem } = asked
  const isLeft = (id: string) => left.has(id)
  const isDone = (id: string) => begun.has(id)
  const whole = problem.tasks.filter(({ id }) => !isLeft(id))
  const active = new Map(
    whole.map(({ id, activeSeconds }) => [id, begun.get(id)?.activeSeconds ?? activeSeconds]),
  )
  const beganAt = (id: string) => seconds(begun.get(id)?.beganAt ?? originAt)
  const endOf = (id: string) => beganAt(id) + (active.get(id) ?? 0)
  const past: WaitOfPast[] = []
  const waits = waitsLeft(problem.waits, left).flatMap((wait): Wait[] => {
    const { from, to } = wait
    const more = anew.moreSeconds.get(from) ?? 0
    const planned = Math.max(0, wait.seconds + more)
    if (!isDone(from)) return [{ ...wait, seconds: planned }]
    const part = asked.parts.find(({ id }) => id === from)
    const byMark = part?.what === 'work' && part.step.endsBy.by !== 'clock'
    const overAt = begun.get(from)?.overAt ?? null
    const said = overAt === null ? null : Math.max(0, seconds(overAt) - endOf(from))
    const wanted = byMark ? (said ?? Math.max(planned, nowSeconds - endOf(from))) : planned
    const of = { from, to, plannedSeconds: wanted, lateSeconds: wait.lateSeconds, byMark }
    if (isDone(to)) {
      past.push({ ...of, doneSeconds: beganAt(to) - endOf(from) })
      return []
    }
    past.push({ ...of, doneSeconds: null })
    const least = Math.min(wanted, said ?? wanted)
    const soonest = Math.max(least, nowSeconds - endOf(from))
    const latest = Math.max(soonest, wanted + wait.lateSeconds) + anew.graceSeconds
    const early = byMark || said !== null ? 0 : Math.min(wait.earlySeconds, soonest)
    return [{ from, to, seconds: soonest, earlySeconds: early, lateSeconds: latest - soonest }]
  })
  const open = new Set(whole.filter(({ id }) => !isDone(id)).map(({ id }) => id))
  const still = stillHeld(problem, anew, { endOf, nowSeconds })
  return {
    past,
    problem: {
      ...problem,
      tasks: whole.map((task) => ({
        ...task,
        activeSeconds: active.get(task.id) ?? task.activeSeconds,
        uses: isDone(task.id) ? (still.uses.get(task.id) ?? []) : task.uses,
      })),
      waits,
      orders: problem.orders.filter(
        ({ from, to, seconds: least }) =>
          open.has(to) && (open.has(from) || (isDone(from) && least >= 0)),
      ),
      stays: still.stays,
      blocks: still.blocks,
      equal: problem.equal.map((group) => ({
        ...group,
        spans: group.spans.filter(({ from, to }) => !isLeft(from) && !isLeft(to)),
      })),
      window: { startSeconds: Math.min(0, ...[...begun.keys()].map(beganAt)) },
      done: whole.flatMap(({ id }) => (isDone(id) ? [{ task: id, atSeconds: beganAt(id) }] : [])),
      nowSeconds,
    },
  }
}

/** The waits without what is left out: what came before it is followed by what comes after it. */
function waitsLeft(waits: readonly Wait[], left: ReadonlySet<string>): Wait[] {
  let rest = [...waits]
  for (const id of left) {
    const before = rest.filter(({ to }) => to === id)
    const after = rest.filter(({ from }) => from === id)
    const joined = before.flatMap((one) => after.map((other) => ({ ...one, to: other.to })))
    rest = [...rest.filter(({ from, to }) => from !== id && to !== id), ...joined]
  }
  return rest.filter(
    (wait, at) => rest.findIndex(({ from, to }) => from === wait.from && to === wait.to) === at,
  )
}

interface Moments {
  endOf: (id: string) => number
  nowSeconds: number
}

/** What is held now and from now on, as far as there is room for it: the log may have taken more than there is. */
function stillHeld(
  problem: DayProblem,
  { begun, left, blocks }: Anew,
  { endOf, nowSeconds }: Moments,
) {
  const hands = problem.capacities.hands ?? 1
  // Who works at an hour at which nobody was to work is at work.
  const ahead = blocks.filter(
    ({ count, fromSeconds, toSeconds }) =>
      toSeconds > nowSeconds && !(count >= hands && fromSeconds <= nowSeconds),
  )
  const room = new Map(Object.entries(problem.capacities))
  const takes = (resource: string, count: number) => {
    const free = (room.get(resource) ?? 0) - count
    if (free < 0) return false
    room.set(resource, free)
    return true
  }
  const uses = new Map(
    problem.tasks.flatMap((task) => {
      if (!begun.has(task.id) || endOf(task.id) <= nowSeconds) return []
      const meets = ahead.some(
        ({ fromSeconds, resource }) => resource === 'hands' && fromSeconds < endOf(task.id),
      )
      const held = meets ? [] : task.uses.filter(({ resource, count }) => takes(resource, count))
      return [[task.id, held] as const]
    }),
  )
  const inside = problem.stays.filter(({ from, to }) => begun.has(from) && !begun.has(to))
  const heats = new Set(inside.map(({ celsius }) => celsius))
  const stays = problem.stays.flatMap((stay): Stay[] => {
    if (left.has(stay.from) || left.has(stay.to) || begun.has(stay.to)) return []
    if (!begun.has(stay.from)) return [stay]
    if (!takes(stay.resource, stay.count)) return []
    const { celsius: _, ...bare } = stay
    return [heats.size > 1 ? bare : stay]
  })
  return { uses, stays, blocks: ahead }
}
