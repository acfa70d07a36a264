import { measuredLevel } from '@/core/plan-edits/levels/measured-level.ts'
import { withoutWrittenFirst } from '@/core/plan-edits/start/with-written-first.ts'
import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { undatedPlan } from '@/core/trial/undated-plan.ts'

/**
 * The plan that confirms a winner: it and the control alone, the rest as before. Where the winner is the control, the
 * strongest other level stands against it. The question says what it follows.
 */
export function confirmingPlan(plan: Plan, winner: Level, rival: Level): Plan {
  const levels = plan.levels.filter(({ id }) => id === winner.id || id === rival.id)
  return {
    ...withoutWrittenFirst(plan),
    question: shortened(`Confirm: ${plan.question}`),
    expectation: null,
    tellApart: null,
    levels: levels.some((level) => level.control)
      ? levels
      : levels.map((level) => ({ ...level, control: level.id === rival.id })),
  }
}

/**
 * The plan that narrows: as many levels over half the span around the best, the control kept as one of them. Steps are
 * rounded to a tenth of the old ones, so that no level has a number nobody can weigh.
 */
export function narrowingPlan(plan: Plan, best: number, newId: () => string): Plan {
  const values = plan.levels.flatMap(({ value }) => (value === null ? [] : [value]))
  const half = (Math.max(...values) - Math.min(...values)) / 4
  const count = Math.max(3, plan.levels.length)
  const step = (half * 2) / (count - 1)
  const grain = 10 ** Math.floor(Math.log10(step))
  const rounded = (value: number) => Number((Math.round(value / grain) * grain).toPrecision(12))
  const around = Array.from({ length: count }, (_, index) => rounded(best - half + index * step))
  const control = plan.levels.find((level) => level.control)
  const kept = new Set(around.filter((value) => value !== control?.value))
  const made = [...kept].map((value) => measuredLevel(newId(), value))
  return {
    ...withoutWrittenFirst(plan),
    question: shortened(`Narrow: ${plan.question}`),
    expectation: null,
    tellApart: null,
    levels: [...made, ...(control ? [control] : [])].toSorted(
      (a, b) => (a.value ?? 0) - (b.value ?? 0),
    ),
  }
}

function shortened(question: string): string {
  return question.length <= 200 ? question : `${question.slice(0, 199)}…`
}

interface Start {
  newId: () => string
  at: number
  zone: string
}

/** A plan as the first of a trial that follows: under its own identity, with nothing accepted yet. */
export function followingPlan(plan: Plan, { newId, at, zone }: Start): Plan {
  return { ...undatedPlan(plan), id: newId(), trialId: newId(), at, zone, accepted: [] }
}
