import type { Departure } from '@/core/session/departure.ts'
import type { Unit } from '@/core/session/line.ts'
import type { BenchEntry } from '@/core/session/press/new-event.ts'
import type { StepRun } from '@/core/session/step-runs.ts'

/** Something done otherwise to one dough or piece that could be done to others as well. */
export type Matchable = Extract<Departure, { what: 'wait' | 'step-missing' | 'step-extra' }>

/**
 * How the other doughs or pieces stand to what was done otherwise to one: those that had the same, those that still can, with
 * the entries of the press that asks it of them, and those that are past it.
 */
export interface Match {
  had: Unit[]
  can: Unit[]
  past: Unit[]
  press: BenchEntry[]
}

/**
 * Whether the others can be matched to one that was handled otherwise, now (UTC ms): one more repeat while the step after it has not begun,
 * a longer wait while theirs runs or is to come, a shorter one while theirs is not longer yet, a step left out while it has not
 * begun. The others are those with the same step; what was matched already is not asked for again.
 */
export function matchOf(departure: Matchable, runs: readonly StepRun[], now: number): Match {
  const match: Match = { had: [], can: [], past: [], press: [] }
  const { stepId, repeat } = departure
  for (const other of othersOf(departure, runs)) {
    const line = runs.filter(({ unit: of, batchId }) => of.id === other.id || batchId === other.id)
    const run = line.find(
      (one) => one.unit.id === other.id && one.step.id === stepId && one.repeat === repeat,
    )
    const stands = standsTo(departure, line, run, now)
    match[stands].push(other)
    if (stands === 'can') match.press.push(askedOf(departure, other))
  }
  return match
}

function othersOf({ stepId, unit }: Matchable, runs: readonly StepRun[]): Unit[] {
  const others = new Map<string, Unit>()
  for (const { unit: other, step } of runs)
    if (step.id === stepId && other.id !== unit.id && other.kind === unit.kind)
      others.set(other.id, other)
  return [...others.values()]
}

function standsTo(
  departure: Matchable,
  line: readonly StepRun[],
  run: StepRun | undefined,
  now: number,
): 'had' | 'can' | 'past' {
  switch (departure.what) {
    case 'step-extra': {
      if (run) return 'had'
      const last = line.findLastIndex(({ step }) => step.id === departure.stepId)
      return line.slice(last + 1).some(isBehind) ? 'past' : 'can'
    }
    case 'step-missing':
      if (!run || run.skipped) return 'had'
      return run.startedAt !== null || run.stoppedAt !== null || isPassedOver(run, line)
        ? 'past'
        : 'can'
    case 'wait':
      return waitStands(departure, line, run, now)
  }
}

function waitStands(
  departure: Extract<Matchable, { what: 'wait' }>,
  line: readonly StepRun[],
  run: StepRun | undefined,
  now: number,
): 'had' | 'can' | 'past' {
  const { doneSeconds, toleranceSeconds } = departure
  if (!run || run.skipped) return 'past'
  const isAlike = (seconds: number) => Math.abs(seconds - doneSeconds) <= toleranceSeconds
  if (run.startedAt !== null && run.stoppedAt !== null)
    return isAlike((run.stoppedAt - run.startedAt) / 1000) ? 'had' : 'past'
  if (isPassedOver(run, line)) return 'past'
  if (run.moreSeconds === moreSecondsOf(departure)) return 'had'
  const soFar = run.startedAt === null ? 0 : (now - run.startedAt) / 1000
  return soFar <= doneSeconds + toleranceSeconds ? 'can' : 'past'
}

const isBehind = ({ startedAt, stoppedAt, skipped }: StepRun) =>
  startedAt !== null || stoppedAt !== null || skipped

const isPassedOver = (run: StepRun, line: readonly StepRun[]) =>
  line.slice(line.indexOf(run) + 1).some(isBehind)

/** By how much a wait was longer than planned, in whole seconds. */
const moreSecondsOf = ({ doneSeconds, plannedSeconds }: Extract<Matchable, { what: 'wait' }>) =>
  Math.round(doneSeconds - plannedSeconds)

function askedOf(departure: Matchable, about: Unit): BenchEntry {
  const { stepId, repeat } = departure
  switch (departure.what) {
    case 'step-extra':
      return { kind: 'step-added', about, stepId, repeat }
    case 'step-missing':
      return { kind: 'step-skipped', about, stepId, repeat }
    case 'wait':
      return {
        ...{ kind: 'wait-changed', about, stepId, repeat },
        moreSeconds: moreSecondsOf(departure),
      }
  }
}

/** The entries of the press by which a dough or piece gets one repeat of a step more than planned. */
export function oneMore(unit: Unit, stepId: string, line: readonly StepRun[]): BenchEntry[] {
  const last = line.findLast(({ step, unit: of }) => step.id === stepId && of.id === unit.id)
  return last ? [{ kind: 'step-added', about: unit, stepId, repeat: last.repeat + 1 }] : []
}

/** Whether a departure is one that others can be matched to. */
export const isMatchable = (departure: Departure): departure is Matchable =>
  departure.what === 'wait' || departure.what === 'step-missing' || departure.what === 'step-extra'
