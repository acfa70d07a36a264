import { taskKey } from '@/core/clock-plan/day-tasks.ts'
import type { WorkPart } from '@/core/clock-plan/work-part.ts'
import type { StepRun } from '@/core/session/step-runs.ts'

/** A part of the work that was begun: when (UTC ms), how long hands were or will be on it, and when its wait was said to be over. */
export interface PartBegun {
  beganAt: number
  activeSeconds: number
  overAt: number | null
}

/** How each part of the day stands by the log. */
export interface PartsBehind {
  begun: ReadonlyMap<string, PartBegun>
  /** Passed over, said not to be done, or of pieces that will not be served. */
  left: ReadonlySet<string>
  /** By how much each part's wait was agreed to be longer, with what was added to it; seconds. */
  moreSeconds: ReadonlyMap<string, number>
}

/**
 * What the log says of the day's parts at a moment. What is in hand longer than planned is thought to end now; a bake's stamps
 * are those of the oven: in once the hands are off, out as they take it up.
 */
export function partsBehind(
  parts: readonly WorkPart[],
  runs: readonly StepRun[],
  lost: (part: WorkPart) => boolean,
  now: number,
): PartsBehind {
  const runOf = new Map(runs.map((run) => [taskKey(run), run]))
  const partOf = new Map(parts.map((part) => [part.id, part]))
  const runsOf = (part: WorkPart): StepRun[] => part.taskKeys.flatMap((key) => runOf.get(key) ?? [])
  const begun = new Map<string, PartBegun>()
  for (const part of parts) {
    const found =
      part.what === 'work'
        ? workBegun(part, runsOf(part), now)
        : endBegun(part, partOf.get(part.after[0]?.from ?? ''), runsOf)
    if (found) begun.set(part.id, found)
  }
  const later = laterParts(parts)
  const left = new Set<string>()
  for (const part of parts) {
    if (begun.has(part.id)) continue
    const own = runsOf(part)
    const skipped = own.length > 0 && own.every((run) => run.skipped)
    const passed = (later.get(part.id) ?? []).some((id) => begun.has(id))
    if (skipped || passed || lost(part)) left.add(part.id)
  }
  const moreSeconds = new Map(
    parts.map((part) => [part.id, agreedMore(runsOf(part)) + addedSeconds(part, runs)]),
  )
  return { begun, left, moreSeconds }
}

function workBegun(part: WorkPart, runs: readonly StepRun[], now: number): PartBegun | null {
  const starts = runs.flatMap(({ startedAt }) => (startedAt === null ? [] : [startedAt]))
  if (starts.length === 0) return null
  const first = Math.min(...starts)
  if (part.step.kind === 'bake')
    return {
      ...{ beganAt: first - part.activeSeconds * 1000, activeSeconds: part.activeSeconds },
      overAt: null,
    }
  const over = runs.map(({ stoppedAt, skipped }) => stoppedAt ?? (skipped ? first : null))
  const overAt = over.some((at) => at === null) ? null : Math.max(...over.map((at) => at ?? first))
  const off = runs.map((run) => run.handsOffAt)
  const handsOff = off.every((at) => at !== null) ? Math.max(...off.map((at) => at ?? first)) : null
  const waits = part.step.waitSeconds > 0
  const planned = first + part.activeSeconds * 1000
  const ended = handsOff ?? (waits ? Math.min(planned, overAt ?? planned) : overAt)
  const stillOn = starts.length < runs.length || (!waits && ended === null)
  const until = ended ?? (stillOn ? Math.max(planned, now) : planned)
  return { beganAt: first, activeSeconds: Math.max(0, Math.round((until - first) / 1000)), overAt }
}

/** A pull, or the end of a last wait: there once what it ends is said to be over. */
function endBegun(
  part: WorkPart,
  from: WorkPart | undefined,
  runsOf: (part: WorkPart) => StepRun[],
): PartBegun | null {
  const stops = from ? runsOf(from).map(({ stoppedAt }) => stoppedAt) : []
  const last = stops.at(-1)
  return last === undefined || last === null
    ? null
    : { beganAt: last, activeSeconds: part.activeSeconds, overAt: null }
}

/** What comes after each part on its lines, however far. */
function laterParts(parts: readonly WorkPart[]): ReadonlyMap<string, readonly string[]> {
  const nexts = new Map<string, string[]>()
  for (const { id, after } of parts)
    for (const { from } of after) nexts.set(from, [...(nexts.get(from) ?? []), id])
  const found = new Map<string, readonly string[]>()
  const of = (id: string): readonly string[] => {
    const known = found.get(id)
    if (known) return known
    const all = [...new Set((nexts.get(id) ?? []).flatMap((next) => [next, ...of(next)]))]
    found.set(id, all)
    return all
  }
  for (const { id } of parts) of(id)
  return found
}

const agreedMore = (runs: readonly StepRun[]) =>
  Math.max(0, ...runs.map(({ moreSeconds }) => moreSeconds)) +
  Math.min(0, ...runs.map(({ moreSeconds }) => moreSeconds))

/** Repeats beyond the plan that are still to be done after a part's own. */
function addedSeconds({ step, repeat, unitIds, what }: WorkPart, runs: readonly StepRun[]): number {
  if (what !== 'work' || repeat !== step.repeats) return 0
  return runs
    .filter((run) => run.added && run.step.id === step.id && unitIds.includes(run.unit.id))
    .filter((run) => run.stoppedAt === null && !run.skipped)
    .reduce((sum, run) => sum + run.step.handsSeconds + run.step.waitSeconds, 0)
}
