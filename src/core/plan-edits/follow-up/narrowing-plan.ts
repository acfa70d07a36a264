import { sessionsForChance } from '@/core/design/as-good-chance.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { measuredLevel } from '@/core/plan-edits/levels/measured-level.ts'
import { withoutWrittenFirst } from '@/core/plan-edits/start/with-written-first.ts'
import { most } from '@/core/record/most.ts'
import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { followingQuestion } from './following-question.ts'

/** What the trial before has taught, as far as it sizes the next. */
export interface NarrowWith {
  newId: () => string
  /** With its scales: neighbours have to be kept apart by them. */
  kitchen: readonly KitchenThing[]
  /** Variance of one level's mean in one session, as just learned with the same tasters; null where no session was repeated. */
  unitVariance: number | null
}

const fewest = 3

/**
 * The plan that narrows: levels across the stretch where the best may lie, the control kept as one of them. As many levels as before,
 * or fewer (three at least) until the scales keep neighbours apart; steps are rounded to a tenth of themselves, so that no
 * level has a number nobody can weigh. Sessions are those that make it 8 in 10 to show an easy level as good as the best within the
 * margin (R3, named before the mix) with the spread just learned; as planned where that is unknown or would take more than a trial holds.
 */
export function narrowingPlan(
  plan: Plan,
  { low, high }: { low: number; high: number },
  { newId, kitchen, unitVariance }: NarrowWith,
): Plan {
  const counts = Array.from(
    { length: Math.max(1, plan.levels.length - fewest + 1) },
    (_, index) => Math.max(fewest, plan.levels.length) - index,
  )
  const plans = counts.map((count) => ({
    ...withoutWrittenFirst(plan),
    question: followingQuestion('Narrow', plan),
    expectation: null,
    tellApart: null,
    levels: levelsAcross(plan, low, high, count, newId),
  }))
  const apart = plans.find((one) =>
    weighSheet(one, kitchen).neighbours.every(({ apart: kept }) => kept === 'kept-apart'),
  )
  const next = apart ?? plans.at(-1)
  if (!next) throw new Error('three levels at least are tried')
  return { ...next, plannedSessions: sessionsOf(next, unitVariance) }
}

function levelsAcross(
  plan: Plan,
  low: number,
  high: number,
  count: number,
  newId: () => string,
): Level[] {
  const step = (high - low) / (count - 1)
  const grain = 10 ** Math.floor(Math.log10(step))
  const rounded = (value: number) => Number((Math.round(value / grain) * grain).toPrecision(12))
  const across = Array.from({ length: count }, (_, index) => rounded(low + index * step))
  const control = plan.levels.find((level) => level.control)
  const usual = control?.value ?? null
  // A new level closer to the usual than half a step would ask the same thing twice.
  const kept = new Set(
    across.filter((value) => usual === null || Math.abs(value - usual) >= step / 2),
  )
  const made = [...kept].map((value) => measuredLevel(newId(), value))
  return [...made, ...(control ? [control] : [])].toSorted(
    (a, b) => (a.value ?? 0) - (b.value ?? 0),
  )
}

function sessionsOf(plan: Plan, unitVariance: number | null): number {
  const margin = plan.responses.find(({ id }) => id === plan.mainResponseId)?.margin ?? null
  if (unitVariance === null || margin === null || !(unitVariance > 0)) return plan.plannedSessions
  const enough = sessionsForChance({
    levels: plan.levels.length,
    ...{ unitVariance, margin, named: true },
  })
  return enough === null || enough > most.plannedSessions ? plan.plannedSessions : enough
}
