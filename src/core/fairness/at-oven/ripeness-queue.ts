import { lineOf } from '@/core/clock-plan/day-tasks.ts'
import { bakeTasks, type OvenBake, ovenBakes } from '@/core/clock-plan/oven-bake.ts'
import { comparableHours } from '@/core/dough-temperature/comparable-hours.ts'
import { thresholds } from '@/core/fairness/thresholds.ts'
import type { AgendaItem } from '@/core/session/agenda.ts'
import type { Standing } from '@/core/session/effective-events.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { StepRun } from '@/core/session/step-runs.ts'
import { temperaturesOf } from '@/core/session/temperatures.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/** What tells how ripe the waiting doughs are: the rise in their tubs, how long their mark is past, time and warmth, or time alone. */
export type RipeBy = 'rise' | 'mark' | 'hours' | 'clock'

export interface RipenessQueue {
  by: RipeBy
  /** The ripest of what waits, where it is riper than the dealt next by the size that is to be known; by so many percent. */
  riper: { item: AgendaItem; percent: number } | null
  /** The design lets it go in first: else the order is the one in the mouth, and the difference stays to the findings. */
  mayGoFirst: boolean
}

interface AtOven {
  session: Session
  plan: Plan
  runs: readonly StepRun[]
  events: readonly Standing[]
  /** What is next on every line; what waits for the oven is to begin its bake. */
  items: readonly AgendaItem[]
  now: number
}

/** Readings of tubs older than this no longer tell how far the doughs are. Common practice. */
const freshTubSeconds = 1800

/**
 * Which of the doughs or pieces that wait for the oven is ripest, by the best evidence that all of them have: the rise in the
 * marked tub against their target, minutes past the mark, comparable hours by their readings, else the time since the mix. What
 * rests before it is eaten may change places within its flight, and so may what nobody tastes; what is eaten hot only within its
 * load, as the order in the oven is the one in the mouth. Null where fewer than two wait.
 */
export function ripenessQueue(at: AtOven): RipenessQueue | null {
  const { session, plan, runs, items } = at
  const waiting = items.filter(({ step, do: what }) => step.kind === 'bake' && what === 'start')
  const [next] = waiting
  if (!next || waiting.length < 2) return null
  const bakeOf = new Map(ovenBakes(plan, session, runs).map((bake) => [bake.id, bake]))
  const flightOf = (id: string) => session.pieces.find((piece) => piece.id === id)?.flightId ?? null
  const own = bakeOf.get(next.unit.id)
  const rivals = waiting.filter(({ unit }) => flightOf(unit.id) === flightOf(next.unit.id))
  const found = ripenessOf(at, rivals)
  const mine = found.of.get(next) ?? 0
  const [ripest] = rivals.toSorted(
    (one, other) => (found.of.get(other) ?? 0) - (found.of.get(one) ?? 0),
  )
  const percent = ripest ? ((found.of.get(ripest) ?? 0) - mine) * 100 : 0
  const mayGoFirst =
    ripest !== undefined && own !== undefined && mayChange(plan, own, bakeOf.get(ripest.unit.id))
  // Ages in an order that stays are as they were dealt: nothing new to be known.
  const told = mayGoFirst || found.by !== 'clock'
  const isRiper = ripest && ripest !== next && percent >= (thresholds['ferment-hours'].know ?? 0)
  return {
    by: found.by,
    riper: isRiper && told ? { item: ripest, percent } : null,
    mayGoFirst: mayGoFirst && ripest !== next,
  }
}

function mayChange(plan: Plan, next: OvenBake, other: OvenBake | undefined): boolean {
  if (!other || other.heat !== next.heat) return false
  return plan.serving === 'rested' || plan.tasters.length === 0 || other.load === next.load
}

/** How ripe each is as a share of what it is to be, 1 for ripe or for the mean of all. */
function ripenessOf(
  at: AtOven,
  rivals: readonly AgendaItem[],
): { by: RipeBy; of: ReadonlyMap<AgendaItem, number> } {
  const ways: [RipeBy, (item: AgendaItem) => number | null][] = [
    ['rise', (item) => riseShare(at, item)],
    ['mark', (item) => markShare(at, item)],
    ['hours', (item) => hoursOf(at, item)],
    ['clock', (item) => agedHours(at, item)],
  ]
  for (const [by, way] of ways) {
    const shares = rivals.map((item) => [item, way(item)] as const)
    if (shares.some(([, share]) => share === null)) continue
    const values = shares.map(([, share]) => share ?? 0)
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length
    const scale = by === 'mark' || mean <= 0 ? 1 : mean
    return { by, of: new Map(shares.map(([item, share]) => [item, (share ?? 0) / scale])) }
  }
  return { by: 'clock', of: new Map() }
}

/** The step with the last long wait before the bake on a line: what ripens it. */
function ripening({ runs }: AtOven, { unit, batchId }: AgendaItem): StepRun | null {
  const line = lineOf(
    runs.filter((run) => run.batchId === batchId),
    unit.id,
  )
  const [bake] = bakeTasks(line)
  const before = bake ? line.slice(0, line.indexOf(bake)) : line
  return before.findLast(({ step }) => step.waitSeconds > 0 && step.kind !== 'open') ?? null
}

function riseShare(at: AtOven, item: AgendaItem): number | null {
  const step = ripening(at, item)?.step
  const last = at.events.findLast(
    (event) =>
      event.kind === 'rise' && (event.about.id === item.unit.id || event.about.id === item.batchId),
  )
  if (last?.kind !== 'rise' || at.now - last.at > freshTubSeconds * 1000) return null
  const target = step?.endsBy.by === 'mark' ? step.endsBy.risePercent : undefined
  return (100 + last.percent) / (100 + (target ?? 0))
}

function markShare(at: AtOven, item: AgendaItem): number | null {
  const run = ripening(at, item)
  if (!run || run.stoppedAt === null || run.step.endsBy.by === 'clock') return null
  return 1 + (at.now - run.stoppedAt) / 1000 / Math.max(60, run.step.waitSeconds)
}

function hoursOf(at: AtOven, item: AgendaItem): number | null {
  if (at.plan.formula.preferments.some(({ kind }) => kind === 'starter')) return null
  const readings = temperaturesOf(at.events, 'dough', item.batchId).toSorted(
    (one, other) => one.at - other.at,
  )
  const [first] = readings
  const begun = mixedAt(at, item)
  const last = readings.at(-1)
  if (!first || !last || begun === null) return null
  const line = [{ ...first, at: Math.min(begun, first.at) }, ...readings, { ...last, at: at.now }]
  const hours = comparableHours(
    line.map((one) => ({ seconds: one.at / 1000, celsius: one.celsius })),
  )
  return hours.ok ? hours.hours : null
}

function agedHours(at: AtOven, item: AgendaItem): number | null {
  const begun = mixedAt(at, item)
  return begun === null ? null : (at.now - begun) / 3_600_000
}

const mixedAt = ({ runs }: AtOven, { batchId }: AgendaItem) =>
  runs.find((run) => run.batchId === batchId && run.startedAt !== null)?.startedAt ?? null

export interface FloorNow {
  celsius: number
  /** What the floor read on average before the launches so far. */
  beforeCelsius: number
}

/**
 * The floor's last reading against those before the earlier launches, where they differ by the size that is to be known: a piece
 * that waits for the floor goes onto one as hot as the others had. Null where nothing tells, or it is as hot.
 */
export function floorNow(events: readonly Standing[]): FloorNow | null {
  const readings = temperaturesOf(events, 'oven-floor')
  const launches = events
    .flatMap(({ kind, at }) => (kind === 'bake-in' ? [at] : []))
    .toSorted((one, other) => one - other)
  const before = launches.flatMap((at, index) => {
    const since = launches[index - 1] ?? Number.NEGATIVE_INFINITY
    const own = readings.findLast((reading) => reading.at <= at && reading.at > since)
    return own ? [own.celsius] : []
  })
  const last = readings.at(-1)
  const lastLaunch = launches.at(-1)
  if (!last || lastLaunch === undefined || last.at <= lastLaunch || before.length === 0) return null
  const beforeCelsius = before.reduce((sum, value) => sum + value, 0) / before.length
  const differs = Math.abs(last.celsius - beforeCelsius) >= (thresholds['oven-floor'].know ?? 0)
  return differs ? { celsius: last.celsius, beforeCelsius } : null
}
