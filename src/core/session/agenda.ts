import { handsOnDoughSeconds, staggerSeconds } from '@/core/clock-plan/bake-order.ts'
import { begunSeconds } from '@/core/clock-plan/begun-seconds.ts'
import { waysDiffer } from '@/core/clock-plan/way-to-oven.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Step } from '@/core/trial/step.ts'
import type { Standing } from './effective-events.ts'
import { notServed } from './failures.ts'
import { batchOf, letterOfLevel, type Unit } from './line.ts'
import { ovenTurns } from './oven-turns.ts'
import type { Session } from './session-record.ts'
import { runSeconds, type StepRun, stepRuns } from './step-runs.ts'

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
 * due to end after its hands and its wait; the next starts when the one before ended; the first step of a dough is due one
 * stagger after the dough before it in dough order or, where the levels take differently long to the oven, by so much later
 * that both meet there. Pieces go into the oven in the order of their loads, and are due there once a place is free. A step
 * that was passed over stays passed over. Lines that are through, and pieces that will not be served, are not listed.
 */
export function agenda(
  session: Session,
  plan: Plan,
  effective: readonly Standing[],
  now: number,
): AgendaItem[] {
  const lost = notServed(session, effective)
  const runs = stepRuns(session, plan, effective)
  const gap = gapSeconds(session, plan)
  let doughBefore: { id: string; startedAt: number } | null = null
  const found = new Map<string, Next>()
  for (const batchId of session.dealt.doughOrder) {
    const own = runs.filter((run) => run.batchId === batchId)
    const firstDue = doughBefore && doughBefore.startedAt + gap(doughBefore.id, batchId) * 1000
    const ids = new Set(own.flatMap(({ unit }) => (unit.kind === 'piece' ? [unit.id] : [])))
    for (const id of ids.size > 0 ? ids : [batchId]) {
      if (lost.has(id)) continue
      const next = nextOf(
        own.filter(({ unit }) => unit.kind === 'batch' || unit.id === id),
        firstDue,
      )
      if (next) found.set(`${next.run.unit.id} ${next.run.step.id} ${next.run.repeat}`, next)
    }
    const startedAt = own[0]?.startedAt ?? null
    doughBefore = startedAt === null ? null : { id: batchId, startedAt }
  }
  const next = [...found.values()]
  const toOven = ovenTurns(session, plan, inOven(runs, lost), next.filter(isToBake), now)
  const others = next.filter((each) => !isToBake(each))
  return inTurn(others, toOven).map((each) => asItem(session, each, now))
}

/**
 * Seconds from the beginning of one dough to that of the next; where the ways to the oven differ, by its first turns, and no
 * sooner than the hands are free.
 */
function gapSeconds(session: Session, plan: Plan): (before: string, next: string) => number {
  const stagger = staggerSeconds(plan)
  if (!waysDiffer(plan)) return () => stagger
  const hands = handsOnDoughSeconds(plan)
  const [flight] = session.dealt.flights
  const turns = (flight?.pieceIds ?? []).map(
    (id) => session.pieces.find((piece) => piece.id === id)?.levelId,
  )
  const begun = (batchId: string) => {
    const { levelId } = batchOf(session, batchId)
    const level = plan.levels.find(({ id }) => id === levelId) ?? null
    return begunSeconds(plan, level, turns.indexOf(levelId ?? undefined))
  }
  return (before, next) => Math.max(hands, begun(next) - begun(before))
}

interface Next {
  run: StepRun
  do: 'start' | 'end'
  dueAt: number | null
}

function nextOf(line: readonly StepRun[], firstDue: number | null): Next | null {
  const at = line.findLastIndex((run) => run.startedAt !== null || run.stoppedAt !== null)
  const last = line[at]
  if (last && last.stoppedAt === null && last.startedAt !== null) {
    return { run: last, do: 'end', dueAt: last.startedAt + runSeconds(last.step) * 1000 }
  }
  const run = line[at + 1]
  return run ? { run, do: 'start', dueAt: last ? last.stoppedAt : firstDue } : null
}

const isToBake = ({ run, do: what }: Next) => what === 'start' && run.step.kind === 'bake'

/** The bakes that were begun; a piece that will not be served, and was never said to come out, keeps no place. */
function inOven(runs: readonly StepRun[], lost: ReadonlySet<string>): StepRun[] {
  return runs.filter(
    ({ unit, step, startedAt, stoppedAt }) =>
      step.kind === 'bake' && startedAt !== null && (stoppedAt !== null || !lost.has(unit.id)),
  )
}

/** By due moment, what cannot be reckoned last; into the oven in turn, however the dues lie, and after what is due as soon. */
function inTurn(others: readonly Next[], toOven: readonly Next[]): Next[] {
  const dueOf = ({ dueAt }: Next) => dueAt ?? Number.POSITIVE_INFINITY
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

function asItem(session: Session, { run, do: what, dueAt }: Next, now: number): AgendaItem {
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
